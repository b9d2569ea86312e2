package comparand.reference.format;

import java.util.regex.Pattern;

/** Pages: {@code 41-50} with one hyphen, whatever dash a file has. */
final class Pages {

    private static final Pattern DASH = Pattern.compile("\\s*(?:-{2,3}|[\u2010-\u2015\u2212])\\s*");

    private Pages() {}

    static String read(String text) {
        return DASH.matcher(Plain.text(text)).replaceAll("-");
    }
}
