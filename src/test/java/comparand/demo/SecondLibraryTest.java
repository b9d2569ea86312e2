package comparand.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.Built;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * Another kind of device: haemofilters, with metrics, conditions and definitions that no line of Java knows. The expected
 * figures were computed with SciPy 1.14, a general-purpose reference library (Welch's t interval of {@code ttest_ind}, exact
 * interval of {@code binomtest}), from the raw columns and the printed summaries.
 */
class SecondLibraryTest {

    private final Built filters = Built.of("src/test/resources/library-haemofilter/dossiers/filters.yaml");

    @Test
    void semicolonsDecimalCommasAndAWindowsEncodingAreReadAsDeclared() {
        var clearance = filters.comparand("urea-clearance/veldra-10/150 mL/min").get("summary");

        assertThat(clearance.get("n").asInt()).isEqualTo(5);
        assertThat(clearance.get("value").asDouble()).isCloseTo(135.72, within(1e-9));
        assertThat(clearance.get("sd").asDouble()).isCloseTo(3.1901410627118016, within(1e-9));
    }

    @Test
    void aColumnInKilopascalBecomesMillimetresOfMercury() {
        var pressure =
                filters.comparand("transmembrane-pressure/tormund-8/150 mL/min").get("summary");

        assertThat(pressure.get("value").asDouble()).isCloseTo(47.75405909502308, within(1e-9));
    }

    @Test
    void aDeclaredMissingCodeLeavesARowOutAndSaysSo() {
        assertThat(filters.comparand("urea-clearance/tormund-8/150 mL/min")
                        .get("sizes")
                        .get("units")
                        .asInt())
                .isEqualTo(5);
        assertThat(Built.all(filters.results().get("findings")))
                .anySatisfy(f -> assertThat(f.get("message").asText()).contains("1 of 11 rows"));
    }

    @Test
    void devicesAreComparedAfterWelch() {
        var pair = filters.pair("urea-clearance/veldra-10/150 mL/min", "urea-clearance/tormund-8/150 mL/min");

        assertThat(pair.get("standing").asText()).isEqualTo("same");
        interval(pair, 9.704808870580546, 18.09519112941938);
        assertThat(pair.get("answer").get("difference").get("p").asDouble())
                .isCloseTo(7.914977665450996e-05, within(1e-12));
        interval(
                filters.pair(
                        "transmembrane-pressure/veldra-10/150 mL/min", "transmembrane-pressure/tormund-8/150 mL/min"),
                -10.233898221534677,
                -1.6871150645946598);
    }

    @Test
    void aStandardErrorInLitresIsSetBesideOurs() {
        var pair = filters.pair("urea-clearance/veldra-10/150 mL/min", "W1");

        assertThat(pair.get("standing").asText()).isEqualTo("same-after-conversion");
        assertThat(kinds("W1")).containsExactly("printed", "unit", "spread");
        interval(pair, -5.58222062764461, 15.02222062764455);
    }

    @Test
    void aPublishedCurveIsReadOffAtOurStep() {
        var pair = filters.pair("urea-clearance/veldra-10/150 mL/min", "V1~V2@150 mL/min");

        assertThat(filters.comparand("V1~V2@150 mL/min")
                        .get("summary")
                        .get("value")
                        .asDouble())
                .isEqualTo(130);
        assertThat(pair.get("standing").asText()).isEqualTo("same-after-conversion");
        assertThat(pair.get("answer").get("kind").asText()).isEqualTo("against-figure");
    }

    @Test
    void anotherLiquidIsShownAndNotCompared() {
        var pair = filters.pair("transmembrane-pressure/veldra-10/150 mL/min", "W2");

        assertThat(pair.get("standing").asText()).isEqualTo("conditions-differ");
        assertThat(pair.get("answer").get("kind").asText()).isEqualTo("shown");
    }

    @Test
    void declaredPartsAreAddedUp() {
        var pair = filters.pair("V3", "T1");

        assertThat(filters.comparand("V3").get("summary").get("value").asDouble())
                .isEqualTo(96);
        assertThat(pair.get("standing").asText()).isEqualTo("same-after-conversion");
        assertThat(pair.get("answer").get("difference").get("value").asDouble()).isEqualTo(8);
    }

    @Test
    void eventsKeepTheirExactIntervals() {
        var ours = filters.comparand("clotting/tormund-8").get("summary").get("interval");
        var theirs = filters.comparand("W3").get("summary").get("interval");

        assertThat(ours.get("low").asDouble()).isCloseTo(0.05186729931243657, within(1e-9));
        assertThat(ours.get("high").asDouble()).isCloseTo(0.4028457830777407, within(1e-9));
        assertThat(theirs.get("low").asDouble()).isCloseTo(0.015742179851041527, within(1e-9));
        assertThat(theirs.get("high").asDouble()).isCloseTo(0.20386474873289898, within(1e-9));
    }

    @Test
    void noWordOfAnotherDeviceKindIsPrinted() {
        assertThat(filters.pdf()).doesNotContainIgnoringCase("oxygenator");
        assertThat(filters.workbook().stream().flatMap(List::stream))
                .noneMatch(cell -> cell.toLowerCase(Locale.ROOT).contains("oxygenator"));
    }

    private static void interval(JsonNode pair, double low, double high) {
        var interval = pair.get("answer").get("difference").get("interval");
        assertThat(interval.get("low").asDouble()).isCloseTo(low, within(1e-9));
        assertThat(interval.get("high").asDouble()).isCloseTo(high, within(1e-9));
    }

    private List<String> kinds(String id) {
        return Built.all(filters.comparand(id).get("steps")).stream()
                .map(s -> s.get("kind").asText())
                .toList();
    }
}
