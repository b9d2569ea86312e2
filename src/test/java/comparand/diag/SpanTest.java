package comparand.diag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A stretch of one line of a file. */
class SpanTest {

    @Test
    void itIsWrittenAsEditorsWriteIt() {
        assertThat(new Span("sources/a.yaml", 12, 3, 5)).hasToString("sources/a.yaml:12:3");
        assertThat(Span.startOf("a.yaml")).isEqualTo(new Span("a.yaml", 1, 1, 1));
    }

    /** Columns as spreadsheets name them: after Z comes AA; the last of .xlsx is XFD, number 16384. */
    @ParameterizedTest
    @CsvSource({"1, A1", "26, Z1", "27, AA1", "52, AZ1", "53, BA1", "702, ZZ1", "703, AAA1", "16384, XFD1"})
    void aCellIsNamedAsSpreadsheetsNameIt(int column, String name) {
        assertThat(Span.cell("r.xlsx", "Cases", 1, column).cellName()).isEqualTo(name);
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "Cases, Cases!F17",
                "Fälle_2, Fälle_2!F17",
                "My cases, 'My cases'!F17",
                "Ann's, 'Ann''s'!F17",
                "2026, '2026'!F17"
            })
    void aSheetWhoseNameIsNoWordStandsInQuotes(String sheet, String within) {
        assertThat(Span.cell("studies/a/r.xlsx", sheet, 17, 6)).hasToString("studies/a/r.xlsx, " + within);
    }

    @Test
    void aCellHasNoParts() {
        var cell = Span.cell("r.xlsx", "Cases", 17, 6);

        assertThat(cell.part(3, 2)).isEqualTo(cell);
        assertThat(cell.isCell()).isTrue();
        assertThat(Span.startOf("a.yaml").isCell()).isFalse();
        assertThatThrownBy(() -> Span.cell("r.xlsx", "", 1, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest(name = "line {0}, column {1}, length {2}")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {"0, 1, 1", "1, 0, 1", "1, 1, 0", "-1, 1, 1", "1, 1, -5"})
    void everythingCountsFromOne(int line, int column, int length) {
        assertThatThrownBy(() -> new Span("a.yaml", line, column, length))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("counts from 1");
    }

    @Test
    void spansAreSortedAsOneReads() {
        var read = Stream.of("a.yaml:2:9", "a.yaml:10:1", "a.yaml:10:2", "b.yaml:1:1")
                .map(SpanTest::parse)
                .toList();

        assertThat(read.stream().sorted()).isEqualTo(read);
        assertThat(Stream.of(3, 1, 0, 2).map(read::get).sorted()).isEqualTo(read);
    }

    @Property
    void aPartLiesInTheSameLineFromItsOffsetOn(
            @ForAll @IntRange(min = 1, max = 500) int column,
            @ForAll @IntRange(min = 0, max = 500) int offset,
            @ForAll @IntRange(min = 0, max = 500) int count) {
        var part = new Span("a.yaml", 7, column, 1).part(offset, count);

        assertThat(part.file()).isEqualTo("a.yaml");
        assertThat(part.line()).isEqualTo(7);
        assertThat(part.column()).isEqualTo(column + offset);
        assertThat(part.length()).isEqualTo(Math.max(1, count));
    }

    @Property
    void aPartOfAPartIsAPart(
            @ForAll @IntRange(min = 0, max = 100) int first,
            @ForAll @IntRange(min = 0, max = 100) int second,
            @ForAll @IntRange(min = 1, max = 100) int count) {
        var whole = new Span("a.yaml", 1, 1, 300);

        assertThat(whole.part(first, 200).part(second, count)).isEqualTo(whole.part(first + second, count));
    }

    @Test
    void aValueKeepsItsPlaceWhenItIsTurnedIntoAnother() {
        var place = new Span("a.yaml", 4, 2, 3);
        var located = new Located<>("042", place).map(Integer::parseInt);

        assertThat(located).isEqualTo(new Located<>(42, place)).hasToString("42 at a.yaml:4:2");
    }

    private static Span parse(String text) {
        var parts = text.split(":", 3);
        return new Span(parts[0], Integer.parseInt(parts[1]), Integer.parseInt(parts[2]), 1);
    }
}
