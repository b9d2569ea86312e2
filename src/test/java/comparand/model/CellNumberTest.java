package comparand.model;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.unit.DecimalSign;
import comparand.unit.Parsed;
import comparand.unit.PrintedNumber;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands in the cells of real exports: read as declared, or refused in words of its own; never guessed. */
class CellNumberTest {

    private static Parsed<PrintedNumber> read(String text, DecimalSign sign) {
        return CellNumber.read(DataCell.of(text), Optional.of(sign));
    }

    private static String problem(Parsed<PrintedNumber> parsed) {
        return parsed.fold(n -> "read as " + n.value(), Parsed.Fault::problem);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "<10|is a bound",
                ">500|is a bound",
                "≥ 500|is a bound",
                "98 %|holds a number and letters",
                "98%|holds a number and letters",
                "259 mmHg|holds a number and letters",
                "7.35*|carries a footnote mark",
                "7.35†|carries a footnote mark",
                "5±1|holds a number and its spread",
                "5.1 +/- 0.3|holds a number and its spread",
                "0·98|has a raised dot",
                "12 000|is grouped in thousands",
                "12'000|is grouped in thousands",
                "1.234,5|carries both a point and a comma",
                "1,234.5|carries both a point and a comma",
                "1,234|may be grouped in thousands or carry a decimal sign",
                "7,35|has a decimal comma, and this file is declared to use a point",
                "-|stands where a number should",
                "—|stands where a number should",
                "n/a|is not a number",
                "see note|is not a number",
                "1e5|is written with a power of ten",
                "12:30|is a time or a ratio",
                "NaN|is not a number"
            })
    void underADecimalPointItIsRefusedWithItsReason(String text, String reason) {
        assertThat(problem(read(text, DecimalSign.POINT)))
                .startsWith("`" + text)
                .contains(reason);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "7.35|POINT|7.35",
                "7,35|COMMA|7.35",
                "12.000|POINT|12.000",
                "1,234|COMMA|1.234",
                "−3|POINT|-3",
                "+2|COMMA|2"
            })
    void whatTheDeclaredSignAllowsIsReadAsDeclared(String text, DecimalSign sign, BigDecimal value) {
        assertThat(read(text, sign).orThrow().value()).isEqualTo(value);
    }

    @Property
    void aStoredNumberIsNotTouchedByTheDeclaredSign(
            @ForAll @BigRange(min = "-1000000", max = "1000000") @Scale(4) BigDecimal stored,
            @ForAll DecimalSign sign) {
        var cell = new DataCell.Figure(stored);

        assertThat(CellNumber.read(cell, Optional.of(sign)).orThrow().value()).isEqualByComparingTo(stored);
        assertThat(CellNumber.read(cell, Optional.empty()).orThrow().value()).isEqualByComparingTo(stored);
    }

    @Test
    void whatIsNoNumberInAWorkbookIsRefusedToo() {
        var day = new DataCell.When(Optional.of(LocalDate.of(2026, 3, 1)), Optional.empty());

        assertThat(problem(CellNumber.read(day, Optional.empty()))).contains("2026-03-01", "date or a time");
        assertThat(problem(CellNumber.read(new DataCell.Fault("#DIV/0!"), Optional.empty())))
                .contains("formula failed");
        assertThat(problem(CellNumber.read(DataCell.of("7.35"), Optional.empty())))
                .contains("stored as a text");
        assertThat(problem(CellNumber.read(new DataCell.Figure(new BigDecimal("1e300")), Optional.empty())))
                .contains("larger than any measurement");
    }

    @Test
    void faultsOfOneKindAreToBeMendedInOneWay() {
        var one = read("<10", DecimalSign.POINT).<String>fold(n -> "", Parsed.Fault::fix);
        var other = read(">500", DecimalSign.POINT).<String>fold(n -> "", Parsed.Fault::fix);

        assertThat(one).isEqualTo(other).contains("`missing:`");
    }
}
