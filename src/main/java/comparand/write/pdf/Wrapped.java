package comparand.write.pdf;

import java.util.ArrayList;
import java.util.List;

/**
 * Text broken into lines of a width: at blanks, behind slashes, hyphens and separators where a word is too long, and
 * within a word as the last resort. Non-breaking spaces hold.
 */
final class Wrapped {

    private Wrapped() {}

    static List<String> lines(String text, TextStyle style, float width) {
        var lines = new ArrayList<String>();
        for (var paragraph : text.split("\n", -1)) {
            wrap(paragraph, style, width, lines);
        }
        return lines;
    }

    private static void wrap(String text, TextStyle style, float width, List<String> lines) {
        var line = new StringBuilder();
        for (var word : text.split(" ", -1)) {
            var candidate = line.isEmpty() ? word : line + " " + word;
            if (style.width(candidate) <= width) {
                line.setLength(0);
                line.append(candidate);
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(broken(word, style, width, lines));
        }
        lines.add(line.toString());
    }

    /** Sets the full lines of a word that is wider than the column, and returns what is left of it. */
    private static String broken(String word, TextStyle style, float width, List<String> lines) {
        var rest = word;
        while (style.width(rest) > width && rest.length() > 1) {
            int fits = 1;
            while (fits < rest.length() && style.width(rest.substring(0, fits + 1)) <= width) {
                fits++;
            }
            int cut = niceCut(rest, fits);
            lines.add(rest.substring(0, cut));
            rest = rest.substring(cut);
        }
        return rest;
    }

    private static int niceCut(String word, int fits) {
        for (int i = fits; i > fits / 2; i--) {
            if ("/-_.,;:~@".indexOf(word.charAt(i - 1)) >= 0) {
                return i;
            }
        }
        return Character.isHighSurrogate(word.charAt(fits - 1)) && fits > 1 ? fits - 1 : fits;
    }
}
