package comparand.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;

/** How much room a text takes in a sheet: nine-point Arial, whose widths are those of Helvetica. */
public final class TextWidth {

    private static final double SIZE = 9;
    /** For signs beyond the standard set, such as ≠ and subscripts: as wide as a digit. */
    private static final double DIGIT = 556;

    private static final PDFont PLAIN = new PDType1Font(FontName.HELVETICA);
    private static final PDFont BOLD = new PDType1Font(FontName.HELVETICA_BOLD);

    private TextWidth() {}

    /** In points. */
    public static double of(String text, boolean bold) {
        return text.codePoints().mapToDouble(c -> width(c, bold ? BOLD : PLAIN)).sum() * SIZE / 1000;
    }

    /** Lines that a text takes when it is broken at blanks and behind hyphens, and within a word that is too long. */
    public static int lines(String text, boolean bold, double room) {
        int lines = 1;
        double used = 0;
        for (var word : text.split("(?<= )|(?<=-)", -1)) {
            double wide = of(word.stripTrailing(), bold);
            if (used > 0 && used + wide > room) {
                lines++;
                used = 0;
            }
            while (wide > room) {
                lines++;
                wide -= room;
            }
            used += wide + of(" ", bold) * (word.endsWith(" ") ? 1 : 0);
        }
        return lines;
    }

    private static double width(int character, PDFont font) {
        try {
            return font.getStringWidth(Character.toString(character == '\u00a0' ? ' ' : character));
        } catch (IllegalArgumentException e) {
            return DIGIT;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
