package comparand.document.talk.layout;

import java.util.ArrayList;
import java.util.List;

/** Text broken into lines as office programs break it: at blanks and behind hyphens, a word too long for a line anywhere. */
public final class Lines {

    /** Height of a line for a size of 1, in the faces of offices. */
    static final double LEADING = 1.2;

    private final TypeWidths widths;

    public Lines(TypeWidths widths) {
        this.widths = widths;
    }

    /** How many lines a text takes. */
    public int count(String text, double width, double size, boolean strong) {
        int lines = 0;
        for (var paragraph : text.split("\n", -1)) {
            lines += paragraph(paragraph, width, size, strong);
        }
        return lines;
    }

    /** Its height. */
    public double height(String text, double width, double size, boolean strong) {
        return count(text, width, size, strong) * size * LEADING;
    }

    private int paragraph(String text, double width, double size, boolean strong) {
        int lines = 1;
        double used = 0;
        for (var piece : pieces(text)) {
            double solid = widths.of(piece.stripTrailing(), size, strong);
            if (used > 0 && used + solid > width) {
                lines++;
                used = 0;
            }
            if (solid > width) {
                int broken = (int) Math.ceil(solid / Math.max(width, 1));
                lines += broken - 1;
                used = solid - (broken - 1) * width;
            } else {
                used += widths.of(piece, size, strong);
            }
        }
        return lines;
    }

    /** Whether a word is wider than the line, and would be broken within. */
    public boolean breaksWord(String text, double width, double size, boolean strong) {
        return text.lines()
                .flatMap(l -> pieces(l).stream())
                .anyMatch(p -> widths.of(p.stripTrailing(), size, strong) > width);
    }

    private static List<String> pieces(String text) {
        var pieces = new ArrayList<String>();
        int start = 0;
        for (int i = 0; i < text.length(); i++) {
            boolean behindHyphen = text.charAt(i) == '-'
                    && i > start
                    && i + 1 < text.length()
                    && Character.isLetter(text.charAt(i + 1));
            if (text.charAt(i) == ' ' || behindHyphen) {
                pieces.add(text.substring(start, i + 1));
                start = i + 1;
            }
        }
        pieces.add(text.substring(start));
        return pieces;
    }
}
