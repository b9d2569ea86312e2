package comparand.document.talk.layout;

import static org.assertj.core.api.Assertions.assertThat;

import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Widths of letters against the Adobe Core 14 font metrics, as the PDF library carries them. */
class TypeWidthsTest {

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    @DisplayName("every printable sign of ASCII is as wide as the published metrics of Helvetica say")
    void ascii(boolean strong) throws IOException {
        var font = font(strong);
        for (int letter = 32; letter < 127; letter++) {
            // the metrics name the quotation marks at these two places by other glyphs than the encoding does
            if (letter != '\'' && letter != '`') {
                assertThat(TypeWidths.width(letter, strong))
                        .as(Character.toString(letter))
                        .isEqualTo(font.getWidth(letter));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    @DisplayName("signs beyond ASCII are taken to be at least as wide as they are")
    void beyond(boolean strong) throws IOException {
        var font = font(strong);
        "±°µ–·×äöüßÄÖÜéè²³"
                .codePoints()
                .forEach(letter -> assertThat(TypeWidths.width(letter, strong))
                        .as(Character.toString(letter))
                        .isGreaterThanOrEqualTo(font.getWidth(letter)));
    }

    @Test
    @DisplayName("a text is as wide as its letters, and a face whose widths are not known is taken to be wider")
    void text() {
        double arial = new TypeWidths("Arial").of("ABC", 10, false);

        // 667 + 667 + 722 thousandths, and three per cent for what programs differ by
        assertThat(arial).isCloseTo(20.56 * 1.03, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(new TypeWidths("Verdana").of("ABC", 10, false)).isGreaterThan(1.15 * arial);
    }

    @Test
    @DisplayName("lines are broken at blanks and behind hyphens, never at a space that does not break")
    void lines() {
        var lines = new Lines(new TypeWidths("Arial"));

        assertThat(lines.count("one two", 1000, 10, false)).isEqualTo(1);
        assertThat(lines.count("one two", 30, 10, false)).isEqualTo(2);
        assertThat(lines.count("one\u00a0two", 30, 10, false)).isEqualTo(2);
        assertThat(lines.breaksWord("one\u00a0two", 30, 10, false)).isTrue();
        assertThat(lines.breaksWord("one-two", 30, 10, false)).isFalse();
        assertThat(lines.count("a\nb", 1000, 10, false)).isEqualTo(2);
    }

    private static BaseFont font(boolean strong) throws IOException {
        return BaseFont.createFont(
                strong ? BaseFont.HELVETICA_BOLD : BaseFont.HELVETICA, BaseFont.CP1252, BaseFont.NOT_EMBEDDED);
    }
}
