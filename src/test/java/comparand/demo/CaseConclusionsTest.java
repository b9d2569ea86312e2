package comparand.demo;

import static comparand.demo.DemoOutputs.inBoth;
import static comparand.demo.DemoOutputs.shown;
import static comparand.demo.DemoOutputs.texts;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.Built;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * What must come out of the cases of three hospitals unaided, and what a quick reader would say instead. The intervals
 * were computed independently of this program from the means, SDs and numbers of the scenario.
 */
class CaseConclusionsTest {

    private final Built demo = Built.demo();

    @Test
    @DisplayName("16: no device had to be changed: 0/54, up to 6.6 % compatible; Skarrow alone 0/12, up to 26 %")
    void noEventsAreNoProofOfSafety() {
        var all = demo.comparand("device-change-out/all-devices").get("summary");
        var skarrow = demo.comparand("device-change-out/skarrow-kid").get("summary");

        assertThat(all.get("events").asInt()).isZero();
        assertThat(all.get("n").asInt()).isEqualTo(54);
        assertThat(100 * all.get("interval").get("high").asDouble()).isCloseTo(6.6, within(0.05));
        assertThat(100 * skarrow.get("interval").get("high").asDouble()).isCloseTo(26.5, within(0.05));
        inBoth("0 of 54; up to 6.6 % is compatible with this", "0 of 54; up to 6.6 % is compatible with this");
        inBoth("0 of 12; up to 26 % is compatible with this", "0 of 12; up to 26 % is compatible with this");
    }

    @Test
    @DisplayName(
            "14: free haemoglobin, Skarrow minus Quillane: -6 (-16 to 4), 10 and 23 cases, other hospitals: not settled")
    void freeHaemoglobinOfPatients() {
        var pair = demo.pair("plasma-free-haemoglobin/skarrow-kid", "plasma-free-haemoglobin/quillane-15");

        assertThat(shown(pair)).isEqualTo("−6 (−16 to 4)");
        assertThat(pair.get("answer")
                        .get("difference")
                        .get("interval")
                        .get("low")
                        .asDouble())
                .isCloseTo(-16.0, within(0.05));
        assertThat(pair.get("answer")
                        .get("difference")
                        .get("interval")
                        .get("high")
                        .asDouble())
                .isCloseTo(4.0, within(0.05));
        assertThat(sizes("plasma-free-haemoglobin/skarrow-kid")).isEqualTo(10);
        assertThat(sizes("plasma-free-haemoglobin/quillane-15")).isEqualTo(23);
        assertThat(pair.get("answer").get("difference").get("verdict").asText()).isEqualTo("not-settled");
        assertThat(texts(pair.get("remarks")))
                .anySatisfy(r -> assertThat(r).contains("side by side only in St Aldwyn"));
        inBoth("side by side only in St Aldwyn", "Skarrow was used in Lake Ferran, St Aldwyn");
    }

    @Test
    @DisplayName("15: platelets against Dunmore after SE to SD: +3.0 (-4.3 to 10.3), not settled")
    void plateletsAfterConversion() {
        var pair = demo.pair("platelet-change/mirrowen-12", "B32");

        assertThat(pair.get("standing").asText()).isEqualTo("same-after-conversion");
        assertThat(shown(pair)).isEqualTo("+3.0 (−4.3 to 10.3)");
        assertThat(pair.get("answer").get("difference").get("verdict").asText()).isEqualTo("not-settled");
        assertThat(demo.comparand("B32").get("summary").get("sd").asDouble()).isCloseTo(11.7, within(0.05));
    }

    @Test
    @DisplayName(
            "17: pressure drop in cases: only Norrisgate has Mirrowen and Quillane: +13 (2 to 24): higher, 10 not settled")
    void withinOneHospital() {
        var within = demo.pair("pressure-drop/mirrowen-12/Norrisgate", "pressure-drop/quillane-15/Norrisgate");
        var all = demo.pair("three-hospitals/pressure-drop/mirrowen-12", "three-hospitals/pressure-drop/quillane-15");

        assertThat(within.get("purpose").asText()).isEqualTo("within-centre");
        assertThat(shown(within)).isEqualTo("+13 (2 to 24)");
        assertThat(within.get("answer").get("difference").get("verdict").asText())
                .isEqualTo("higher-margin-open");
        assertThat(all.get("standing").asText()).isEqualTo("conditions-differ");
        inBoth(
                "at Norrisgate: +13 mmHg (95 % CI 2 to 24): higher; whether by as much as 10 mmHg is not settled",
                "+13");
    }

    @Test
    @DisplayName(
            "what a figure of uptake against oxygen fraction needs: the line, its interval, its range, no single case")
    void dataOfTheFigure() {
        var value = demo.comparand("uptake-per-oxygen-fraction/quillane-15");
        var line = value.get("summary").get("line");

        assertThat(line.get("n").asInt()).isEqualTo(25);
        assertThat(line.get("slope").asDouble())
                .isEqualTo(value.get("summary").get("value").asDouble());
        var points = Built.all(line.get("points"));
        assertThat(points).hasSize(11).allSatisfy(p -> {
            double at = p.get("at").asDouble();
            double mean = p.get("mean").asDouble();
            assertThat(mean)
                    .isCloseTo(
                            line.get("intercept").asDouble() + line.get("slope").asDouble() * at, within(1e-9))
                    .isGreaterThan(p.get("low").asDouble())
                    .isLessThan(p.get("high").asDouble());
        });
        assertThat(points.get(0).get("at")).isEqualTo(line.get("measured").get("low"));
        assertThat(points.get(10).get("at")).isEqualTo(line.get("measured").get("high"));
        // a line is best known among its points, and worst at its ends
        assertThat(width(points.get(5))).isLessThan(width(points.get(0))).isLessThan(width(points.get(10)));
    }

    private static double width(JsonNode point) {
        return point.get("high").asDouble() - point.get("low").asDouble();
    }

    private int sizes(String value) {
        return demo.comparand(value).get("sizes").get("cases").asInt();
    }
}
