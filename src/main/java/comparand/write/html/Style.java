package comparand.write.html;

import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Look;
import java.util.Base64;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The style sheet of a page: its two faces, its look, and what its printed pages carry. */
final class Style {

    private static final int FIRST_PRINTABLE = 0x20;

    private Style() {}

    static String of(Document document) {
        var look = document.look();
        var faces = look.fonts()
                .map(own -> face("normal", own.regular()) + face("600", own.strong()))
                .orElseGet(() ->
                        face("normal", "ComparandSans-Regular.woff2") + face("600", "ComparandSans-Semibold.woff2"));
        return faces + Resources.text("page.css") + shares() + paper(look.paper(), document.edition());
    }

    /** What columns of tables may ask for, in per cent: inline styles are not allowed on the page. */
    private static String shares() {
        return IntStream.rangeClosed(1, 100)
                .mapToObj(i -> ".c%d{--share:%d%%}".formatted(i, i))
                .collect(Collectors.joining("", "", "\n"));
    }

    private static String face(String weight, String file) {
        return face(weight, "woff2", Resources.bytes("fonts/" + file));
    }

    private static String face(String weight, Look.Content file) {
        var ending = file.name().substring(file.name().lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        return face(weight, ending, file.bytes());
    }

    private static String face(String weight, String kind, byte[] bytes) {
        return "@font-face{font-family:\"Comparand Sans\";font-weight:%s;src:url(data:font/%s;base64,%s)}\n"
                .formatted(weight, kind, Base64.getEncoder().encodeToString(bytes));
    }

    /** Paper lies, for tables are wide; marks and imprint stand at the foot of every printed page. */
    private static String paper(Look.Paper paper, Edition edition) {
        var foot = String.join(" \u00b7 ", edition.marks());
        var said = (foot.isEmpty() ? "" : foot + " \u00b7 ") + edition.imprint(" \u00b7 ");
        return ("@page{size:%s;@bottom-left{content:%s;font:8pt \"Comparand Sans\",sans-serif;color:#4A5568;width:85%%}"
                        + "@bottom-right{content:counter(page)\" / \"counter(pages);font:8pt \"Comparand Sans\",sans-serif;color:#4A5568}}\n")
                .formatted(paper == Look.Paper.A4 ? "A4 landscape" : "letter landscape", quoted(said));
    }

    /** A text as CSS Syntax Level 3, section 4.3.7 (escapes), wants it in a string, and so that it ends no style element. */
    static String quoted(String text) {
        var quoted = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            if (c < FIRST_PRINTABLE || "\"\\<>&".indexOf(c) >= 0) {
                quoted.append('\\').append(Integer.toHexString(c)).append(' ');
            } else {
                quoted.appendCodePoint(c);
            }
        });
        return quoted.append('"').toString();
    }
}
