package comparand.write;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Text broken into lines of a width: at blanks, behind slashes, hyphens and separators where a word is too long, and
 * within a word as the last resort. Non-breaking spaces hold.
 */
public final class LineBreaks {

    private static final String SEPARATORS = "/-_.,;:~@";

    private final ToDoubleFunction<String> measure;
    private final double width;
    private final List<String> lines = new ArrayList<>();

    private LineBreaks(ToDoubleFunction<String> measure, double width) {
        this.measure = measure;
        this.width = width;
    }

    /**
     * The lines of a text, at least one; a line feed always breaks.
     *
     * @param width in the unit of the measure
     */
    public static List<String> of(String text, double width, ToDoubleFunction<String> measure) {
        var breaks = new LineBreaks(measure, width);
        for (var paragraph : text.split("\n", -1)) {
            breaks.paragraph(paragraph);
        }
        return List.copyOf(breaks.lines);
    }

    /** Whether some word of the text would have to be broken within. */
    public static boolean breaksWords(String text, double width, ToDoubleFunction<String> measure) {
        for (var word : text.split("[ \n]", -1)) {
            if (measure.applyAsDouble(word) > width) {
                return true;
            }
        }
        return false;
    }

    private void paragraph(String text) {
        var line = "";
        for (var word : text.split(" ", -1)) {
            var candidate = line.isEmpty() ? word : line + " " + word;
            if (measure.applyAsDouble(candidate) <= width) {
                line = candidate;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = broken(word);
        }
        lines.add(line);
    }

    /** Sets the full lines of a word that is wider than a line, and returns what is left of it. */
    private String broken(String word) {
        var rest = word;
        while (measure.applyAsDouble(rest) > width && rest.codePointCount(0, rest.length()) > 1) {
            int cut = cut(rest);
            lines.add(rest.substring(0, cut));
            rest = rest.substring(cut);
        }
        return rest;
    }

    private int cut(String word) {
        int fits = word.offsetByCodePoints(0, 1);
        while (fits < word.length()) {
            int next = word.offsetByCodePoints(fits, 1);
            if (measure.applyAsDouble(word.substring(0, next)) > width) {
                break;
            }
            fits = next;
        }
        for (int i = fits; i > fits / 2; i--) {
            if (SEPARATORS.indexOf(word.charAt(i - 1)) >= 0) {
                return i;
            }
        }
        return fits == word.length() ? word.offsetByCodePoints(fits, -1) : fits;
    }
}
