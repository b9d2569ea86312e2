package comparand.manual;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** The style sheet of the manual and its faces: the colours and the faces are those of the page to explore. */
final class Look {

    private static final String PAGE = "/comparand/write/html/";
    private static final String FROM = "/* Colours";
    private static final String TO = "/* In grey";

    private Look() {}

    /** The files by name. */
    static Map<String, byte[]> files() {
        var files = new LinkedHashMap<String, byte[]>();
        files.put("manual.css", (colours() + Resources.text("manual.css")).getBytes(StandardCharsets.UTF_8));
        for (var face : new String[] {"ComparandSans-Regular.woff2", "ComparandSans-Semibold.woff2"}) {
            files.put(face, Resources.bytes(PAGE + "fonts/" + face));
        }
        return files;
    }

    /** The two sets of colours that the page has. */
    private static String colours() {
        var css = new String(Resources.bytes(PAGE + "page.css"), StandardCharsets.UTF_8);
        int from = css.indexOf(FROM);
        int to = css.indexOf(TO);
        if (from < 0 || to < from) {
            throw new IllegalStateException("the style sheet of the page has no part with the colours");
        }
        return css.substring(from, to).replace("\r\n", "\n");
    }
}
