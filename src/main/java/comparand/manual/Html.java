package comparand.manual;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** A part of a page, written from top to bottom. Every text is escaped; words between backticks are set as code. */
final class Html {

    private static final Pattern CODE = Pattern.compile("`([^`]+)`");
    private static final Pattern ANCHOR = Pattern.compile("[^a-z0-9]+");

    private final StringBuilder out = new StringBuilder();

    /** A text that is safe in elements and attributes. */
    static String text(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    /** The same with code between backticks, which breaks where it must. */
    static String said(String text) {
        return CODE.matcher(text(text)).replaceAll("<code>$1</code>");
    }

    static String code(String text) {
        return "<code>" + text(text) + "</code>";
    }

    static String link(String to, String words) {
        return "<a href=\"%s\">%s</a>".formatted(text(to), said(words));
    }

    /** A name within a page. */
    static String anchor(String words) {
        return ANCHOR.matcher(words.toLowerCase(Locale.ROOT)).replaceAll("-").replaceAll("^-|-$", "");
    }

    /** A sentence: its first letter large, a full stop at its end. */
    static String sentence(String clause) {
        var text = clause.strip();
        if (text.isEmpty()) {
            return text;
        }
        var first = text.startsWith("`") ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
        return first.matches("(?s).*[.!?:…]$") ? first : first + ".";
    }

    /** A name as a heading: its first letter large, unless it is a sign such as pH. */
    static String heading(String name) {
        boolean isSign = name.length() > 1 && Character.isUpperCase(name.charAt(1));
        return isSign ? name : name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }

    Html raw(String html) {
        out.append(html).append('\n');
        return this;
    }

    Html h2(String words) {
        return h2(words, anchor(words));
    }

    Html h2(String words, String id) {
        return raw("<h2 id=\"%s\">%s</h2>".formatted(text(id), said(words)));
    }

    Html h3(String words, String id) {
        return raw("<h3 id=\"%s\">%s</h3>".formatted(text(id), said(words)));
    }

    Html p(String words) {
        return raw("<p>" + said(words) + "</p>");
    }

    Html note(String words) {
        return raw("<p class=\"note\">" + said(words) + "</p>");
    }

    /** Lines that are kept as they are: what is typed, and what is printed. */
    Html pre(String lines) {
        return pre(lines, "");
    }

    Html pre(String lines, String kind) {
        var shown = lines.stripTrailing();
        return raw("<pre tabindex=\"0\"%s><code>%s</code></pre>"
                .formatted(kind.isEmpty() ? "" : " class=\"" + kind + "\"", text(shown)));
    }

    /** A list of items that are HTML already. */
    Html items(List<String> items) {
        raw("<ul>");
        items.forEach(i -> raw("<li>" + i + "</li>"));
        return raw("</ul>");
    }

    /** A table whose cells are HTML already; the first of each row is its heading. */
    Html table(String caption, List<String> headings, List<List<String>> rows) {
        raw("<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\"%s\"><table>".formatted(text(caption)));
        raw("<thead><tr>");
        headings.forEach(h -> raw("<th scope=\"col\">" + said(h) + "</th>"));
        raw("</tr></thead><tbody>");
        rows.forEach(this::row);
        return raw("</tbody></table></div>");
    }

    private void row(List<String> cells) {
        raw("<tr>");
        for (int i = 0; i < cells.size(); i++) {
            raw(i == 0 ? "<th scope=\"row\">" + cells.get(i) + "</th>" : "<td>" + cells.get(i) + "</td>");
        }
        raw("</tr>");
    }

    /** Names and what they stand for, as pairs. */
    Html facts(String... pairs) {
        raw("<dl class=\"facts\">");
        for (int i = 0; i < pairs.length; i += 2) {
            if (!pairs[i + 1].isEmpty()) {
                raw("<div><dt>" + said(pairs[i]) + "</dt><dd>" + pairs[i + 1] + "</dd></div>");
            }
        }
        return raw("</dl>");
    }

    static List<String> cells(String... html) {
        return Arrays.asList(html);
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
