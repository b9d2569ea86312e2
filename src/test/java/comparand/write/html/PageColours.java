package comparand.write.html;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;

/** The colours a style sheet sets, by their names, in one of its looks. */
final class PageColours {

    private static final Pattern RULE = Pattern.compile("(:root(?:\\[data-grey]|:root)?) \\{([^}]*)}");
    private static final Pattern COLOUR = Pattern.compile("--([a-z-]+): (#[0-9A-F]{6});");

    private PageColours() {}

    /** In the order of the sheet, as a browser overlays them. */
    static Map<String, String> of(String css, boolean dark, boolean grey) {
        var colours = new LinkedHashMap<String, String>();
        var screen = css.substring(0, css.indexOf("@media print"));
        int plain = 0;
        var rule = RULE.matcher(screen);
        while (rule.find()) {
            boolean forDark = screen.lastIndexOf("(prefers-color-scheme: dark)", rule.start())
                    > screen.lastIndexOf("\n}", rule.start());
            boolean forGrey = rule.group(1).contains("grey");
            if ((!forDark || dark) && (!forGrey || grey)) {
                var colour = COLOUR.matcher(rule.group(2));
                while (colour.find()) {
                    colours.put(colour.group(1), colour.group(2));
                }
                plain++;
            }
        }
        int expected = (dark ? 2 : 1) * (grey ? 2 : 1);
        if (plain != expected) {
            throw new AssertionError("a look is made of %d rules, found %d".formatted(expected, plain));
        }
        return colours;
    }

    /** Relative luminance, WCAG 2.2, section 6. */
    static double luminance(String colour) {
        double sum = 0;
        double[] weights = {0.2126, 0.7152, 0.0722};
        for (int i = 0; i < weights.length; i++) {
            double part = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            sum += weights[i] * (part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    /** Contrast ratio, WCAG 2.2, section 6. */
    static double contrast(String one, String other) {
        double lighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }
}
