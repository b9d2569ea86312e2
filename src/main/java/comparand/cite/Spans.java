package comparand.cite;

import comparand.cite.Entry.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.text.StringEscapeUtils;

/** The marked-up text that the processor gives, as stretches of upright and slanted type. */
final class Spans {

    private static final Pattern TAG = Pattern.compile("<(?<closing>/?)(?<name>[a-z]+)(?<attributes>[^>]*)>");

    private Spans() {}

    /** A number in a margin of its own, if the style sets one; else empty. */
    static String margin(String markup) {
        var margin = Pattern.compile("<div class=\"csl-left-margin\">(.*?)</div>", Pattern.DOTALL)
                .matcher(markup);
        return margin.find() ? text(of(margin.group(1))) : "";
    }

    /** What stands beside the margin. */
    static String beside(String markup) {
        return markup.replaceFirst("(?s)<div class=\"csl-left-margin\">.*?</div>", "");
    }

    static List<Span> of(String markup) {
        var spans = new ArrayList<Span>();
        var open = new ArrayList<Boolean>();
        var tags = TAG.matcher(markup);
        int from = 0;
        while (tags.find()) {
            add(spans, markup.substring(from, tags.start()), open.contains(true));
            from = tags.end();
            if (tags.group("closing").isEmpty()) {
                open.add(tags.group("name").equals("i")
                        || tags.group("attributes").contains("italic"));
            } else if (!open.isEmpty()) {
                open.remove(open.size() - 1);
            }
        }
        add(spans, markup.substring(from), open.contains(true));
        return spans;
    }

    static String text(List<Span> spans) {
        return new Entry("any", "", spans).text().strip();
    }

    private static void add(List<Span> spans, String markup, boolean slanted) {
        var text = StringEscapeUtils.unescapeHtml4(markup).replaceAll("[ \\n\\r]+", " ");
        boolean nothing = text.isEmpty() || (text.isBlank() && spans.isEmpty());
        if (nothing) {
            return;
        }
        int last = spans.size() - 1;
        if (last >= 0 && spans.get(last).slanted() == slanted) {
            spans.set(last, new Span(spans.get(last).text() + text, slanted));
        } else {
            spans.add(new Span(spans.isEmpty() ? text.stripLeading() : text, slanted));
        }
    }
}
