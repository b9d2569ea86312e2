package comparand.document;

import java.util.regex.Pattern;

/**
 * Keeps a number and its unit on one line: the space between them does not break. So do the space behind a sign such as
 * &#177; and that within {@code 95 % CI}.
 *
 * <p>Joining is done once, where text enters a document, so that every writer and {@code results.json} hold the same text;
 * joining twice changes nothing.
 */
public final class NoBreak {

    private static final char SPACE = '\u00a0';

    private static final String UNIT =
            "(?:%|°[CF]?|[µnmcdk]?(?:mol|Pa|[LlgmK])[²³₂]?(?:Hg|H2O|H₂O)?|min|h|days|units?|runs?|cases?|patients|samples)"
                    + "(?=[/·*\\s.,;:)\\]|?]|$)";

    private static final Pattern BEFORE_UNIT = Pattern.compile("(?<=\\d) (?=" + UNIT + ")");
    private static final Pattern BEHIND_SIGN = Pattern.compile("(?<=[±≥≤≈=<]) (?=[\\d\u2212+])");
    private static final Pattern BEFORE_INTERVAL = Pattern.compile("(?<=%) (?=CI\\b)");

    private NoBreak() {}

    public static String joined(String text) {
        if (text.indexOf(' ') < 0) {
            return text;
        }
        var joined = text;
        for (var pattern : new Pattern[] {BEFORE_UNIT, BEHIND_SIGN, BEFORE_INTERVAL}) {
            joined = pattern.matcher(joined).replaceAll(String.valueOf(SPACE));
        }
        return joined;
    }
}
