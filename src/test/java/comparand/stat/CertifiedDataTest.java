package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Reference data sets of the NIST Statistical Reference Datasets (StRD), by correct digits: the log relative error
 * {@code -log₁₀(|computed - certified| / |certified|)}, 15 at most, as McCullough, Am Stat 1998;52:358-366.
 *
 * <p>The sets built by rule (NumAcc, SmLs, NoInt) and their certified values are from memory; each certified value also
 * follows from the rule by hand. The digits asked for are the 15 of a double less those that the offset of the data takes
 * ({@code log₁₀} of mean over SD), and one.
 */
class CertifiedDataTest {

    private static double digits(double computed, double certified) {
        return computed == certified
                ? 15
                : Math.min(15, -Math.log10(Math.abs(computed - certified) / Math.abs(certified)));
    }

    /** Values around an offset: NumAcc1 to NumAcc4. The mean is first, and the pairs lie 0.1 (or 1) on either side. */
    @ParameterizedTest(name = "NumAcc{0}")
    @CsvSource({
        "1, 10000002,   10000001,   10000003,   1,   10000002,   1,   8",
        "2, 1.2,        1.1,        1.3,        500, 1.2,        0.1, 12",
        "3, 1000000.2,  1000000.1,  1000000.3,  500, 1000000.2,  0.1, 7",
        "4, 10000000.2, 10000000.1, 10000000.3, 500, 10000000.2, 0.1, 6"
    })
    void numAcc(int set, double first, double low, double high, int pairs, double mean, double sd, double digitsOfSd) {
        var moments = Moments.of(SummaryRows.numAcc(first, low, high, pairs));

        assertThat(digits(moments.mean(), mean)).as("mean of NumAcc%d", set).isGreaterThanOrEqualTo(14);
        assertThat(digits(moments.sd(), sd)).as("SD of NumAcc%d", set).isGreaterThanOrEqualTo(digitsOfSd);
    }

    /**
     * Nine groups around an offset: SmLs01 (21 values each, offset 1), SmLs02 (201), SmLs04 (21, offset 10⁶) and SmLs07
     * (21, offset 10¹²). Groups lie at 0.4, 0.3 and 0.5 above the offset, their values 0.1 around that: between 1.68,
     * within 1.8, F 21 for 21 values each.
     */
    @ParameterizedTest(name = "SmLs{0}")
    @CsvSource({
        "1, 1,             21,  1.68,  1.8, 21,  13",
        "2, 1,             201, 16.08, 18,  201, 13",
        "4, 1000000,       21,  1.68,  1.8, 21,  7",
        "7, 1000000000000, 21,  1.68,  1.8, 21,  1"
    })
    void smLs(int set, double offset, int each, double between, double within, double f, double wanted) {
        var groups = new ArrayList<double[]>();
        for (double place : new double[] {0.4, 0.3, 0.5, 0.3, 0.5, 0.3, 0.5, 0.3, 0.5}) {
            groups.add(SummaryRows.numAcc(
                    decimal(offset, place), decimal(offset, place - 0.1), decimal(offset, place + 0.1), each / 2));
        }
        var analysis = OneWay.of(groups);

        assertThat(digits(analysis.squaresBetween(), between)).isGreaterThanOrEqualTo(wanted);
        assertThat(digits(analysis.squaresWithin(), within)).isGreaterThanOrEqualTo(wanted);
        assertThat(digits(analysis.f(), f)).isGreaterThanOrEqualTo(wanted);
    }

    private static double decimal(double offset, double tenths) {
        return Double.parseDouble("%d.%d".formatted((long) offset, Math.round(10 * tenths)));
    }

    /** Lines through the origin: NoInt1 and NoInt2, with the R² about zero that NIST certifies for them. */
    @Test
    void noInt1() {
        var line = LineThroughOrigin.through(
                DoubleStream.iterate(60, x -> x <= 70, x -> x + 1).toArray(),
                DoubleStream.iterate(130, y -> y <= 140, y -> y + 1).toArray());

        assertThat(digits(line.slope(), 2.07438016528926)).isGreaterThanOrEqualTo(14);
        assertThat(digits(line.slopeSe(), 0.165289256198347e-1)).isGreaterThanOrEqualTo(13);
        assertThat(digits(line.residualSd(), 3.56753034006338)).isGreaterThanOrEqualTo(13);
        assertThat(digits(line.rSquaredAboutZero(), 0.999365492298663)).isGreaterThanOrEqualTo(14);
    }

    @Test
    void noInt2() {
        var line = LineThroughOrigin.through(new double[] {4, 5, 6}, new double[] {3, 4, 4});

        assertThat(digits(line.slope(), 0.727272727272727)).isGreaterThanOrEqualTo(14);
        assertThat(digits(line.slopeSe(), 0.420827318078432e-1)).isGreaterThanOrEqualTo(13);
        assertThat(digits(line.residualSd(), 0.369274472937998)).isGreaterThanOrEqualTo(13);
        assertThat(digits(line.rSquaredAboutZero(), 0.993348115299335)).isGreaterThanOrEqualTo(14);
    }

    /** Norris, SiRstv and AtmWtAg stand among the published rows; here by digits. */
    @Test
    void theCertifiedRowsComeOutToTheirDigits() {
        var rows = PublishedStatisticsTest.rows()
                .filter(r -> List.of("reg-norris", "anova-sirstv", "desc-lottery", "desc-michelson")
                        .contains(r.get()[0]))
                .toList();
        assertThat(rows).hasSize(4);
        rows.forEach(r -> {
            var row = (JsonNode) r.get()[1];
            var computed = PublishedStatisticsTest.computed((String) r.get()[0], row);
            row.required("expected")
                    .properties()
                    .forEach(e -> assertThat(digits(
                                    computed.getOrDefault(e.getKey(), Double.NaN),
                                    e.getValue().asDouble()))
                            .as("%s of %s", e.getKey(), r.get()[0])
                            // the offset of Michelson's and the silicon data takes 3.6 and 3.3 of 15 digits
                            .isGreaterThanOrEqualTo(10.5));
        });
    }
}
