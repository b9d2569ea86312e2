package comparand.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.Built;
import comparand.support.ReadBack;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * What the committee of the demo must read. The intervals were computed independently of this program from the printed means,
 * SDs and numbers of the scenario; costs and scores by hand, as each check shows.
 */
class CommitteeConclusionsTest {

    private final Built demo = Built.demo();
    private final String brief = ReadBack.pdf(demo.folder().resolve("committee-brief.pdf"));

    @Test
    @DisplayName(
            "1: primes on one footing are 47, 53 and 75 mL, and each is more than the margin above the present one")
    void prime() {
        assertThat(brief)
                .contains("Does it fit our smallest circuit?")
                .contains("47 (3:T1r1)")
                .contains("53 (4:T1r1)")
                .contains("75 (5:T1r1)")
                .contains("Mirrowen +6 mL, Skarrow +28 mL: higher by more than the margin of 5 mL, as stated");
    }

    @Test
    @DisplayName(
            "8: Mirrowen against Quillane at 1.0 L/min comes first: +17.2 (12.8 to 21.6), for any margin below 12.8")
    void firmest() {
        var said = brief.substring(brief.indexOf("What can be said now"), brief.indexOf("Question by question"));

        assertThat(said.substring(said.indexOf("•") + 1).strip())
                .startsWith(
                        "Mirrowen 12, pressure drop at 1.0 L/min: +17.2 mmHg (95 % CI 12.8 to 21.6): higher by more than"
                                + " the margin of 10 mmHg. This answer holds for any margin below 12.8 mmHg."
                                + " Bench, same conditions, 6 units each.");
        assertThat(said.chars().filter(c -> c == '•').count()).isBetween(1L, 5L);
        assertThat(said).doesNotContain("not settled: compatible");
    }

    @Test
    @DisplayName("9: Skarrow at 1.5: −14.6 (−19.5 to −9.7), at 1.0: −8.5 (−11.9 to −5.1): lower, 10 not settled")
    void skarrowPressure() {
        assertThat(brief)
                .contains("−14.6 (−19.5 to −9.7): lower; whether by as much as 10 mmHg is not settled")
                .contains("−8.5 (−11.9 to −5.1): lower; whether by as much as 10 mmHg is not settled");
    }

    @Test
    @DisplayName("10: haemolysis: Skarrow no difference as large as 5, Mirrowen not settled; not one sentence for both")
    void haemolysis() {
        assertThat(brief)
                .contains("Skarrow −0.5 (−3.4 to 2.4): no difference as large as 5 mg/100 L")
                .contains("Mirrowen +2.5 (−0.6 to 5.6): not settled: compatible with 5.6 mg/100 L higher");
    }

    @Test
    @DisplayName("16: 0 of 54 changed: up to 6.6 % is compatible, and up to 26 % for Skarrow alone")
    void noEvent() {
        assertThat(brief)
                .contains("All devices: 0 of 54; up to 6.6 % is compatible with this")
                .contains("0/12 (up to 26 %)")
                .doesNotContain("safe");
    }

    @Test
    @DisplayName("18: outside the label in 3/17, a separate filter, and that no metric tests the plasma-tight membrane")
    void overall() {
        assertThat(brief)
                .contains("Mirrowen 12: 3/17 outside blood flow 0.1 to 1.2 L/min")
                .contains("none; separate filter 40 µm")
                .contains("keeps plasma back for longer; no metric here tests it")
                .contains("0.1 to 1.2 L/min (4:T1r2)");
    }

    @Test
    @DisplayName("costs: 310 + 86 = 396 and 468.50 + 54.20 + 86 = 608.70; Skarrow's price is missing and stays missing")
    void costs() {
        var costs = Built.all(demo.results().get("costs").get("per-case"));

        assertThat(costs.get(0).get("cost").asDouble()).isCloseTo(396, within(1e-9));
        assertThat(costs.get(1).get("cost").asDouble()).isCloseTo(608.70, within(1e-9));
        assertThat(costs.get(1).get("against-present").asDouble()).isCloseTo(212.70, within(1e-9));
        assertThat(costs.get(2).has("cost")).isFalse();
        assertThat(costs.get(2).get("without-price").asInt()).isEqualTo(2);
        assertThat(brief).contains("396.00 EUR", "608.70 EUR", "Skarrow Kid: not supplied");
    }

    @Test
    @DisplayName(
            "scores: (58.7 − 41.5) / (58.7 − 33.0) for Quillane's pressure drop, and so on; totals by weights 3, 1, 2, 2, 3")
    void scores() {
        // results of the scenario; less is better for the first, third and last
        var means = Map.of(
                "pressure-drop", List.of(41.5, 58.7, 33.0),
                "performance-factor", List.of(0.71, 0.64, 0.75),
                "normalised-index-of-haemolysis", List.of(8.4, 10.9, 7.9),
                "bubble-volume-reduction", List.of(93.1, 92.0, 88.7),
                "priming-volume", List.of(47.0, 53.0, 75.0));
        var less = List.of("pressure-drop", "normalised-index-of-haemolysis", "priming-volume");
        var total = new ArrayList<>(List.of(0.0, 0.0, 0.0));
        double weights = 0;
        for (var metric : Built.all(demo.results().get("weights").get("metrics"))) {
            var of = means.get(metric.get("metric").asText());
            assertThat(metric.get("counts").asBoolean()).isEqualTo(of != null);
            if (of == null) {
                continue;
            }
            double worst = less.contains(metric.get("metric").asText())
                    ? of.stream().mapToDouble(x -> x).max().orElseThrow()
                    : of.stream().mapToDouble(x -> x).min().orElseThrow();
            double range = of.stream().mapToDouble(x -> x).max().orElseThrow()
                    - of.stream().mapToDouble(x -> x).min().orElseThrow();
            weights += metric.get("weight").asDouble();
            for (int d = 0; d < 3; d++) {
                double score = Math.abs(of.get(d) - worst) / range;
                // the means of the scenario are printed to one digit less than those of its data
                assertThat(metric.get("scores").get(d).get("score").asDouble()).isCloseTo(score, within(0.02));
                total.set(d, total.get(d) + metric.get("weight").asDouble() * score);
            }
        }
        assertThat(weights).isEqualTo(11);
        var asSet = variation("Weights as set");
        for (int d = 0; d < 3; d++) {
            assertThat(asSet.get("totals").get(d).get("total").asDouble())
                    .isCloseTo(total.get(d) / weights, within(0.01));
        }
        assertThat(places(asSet)).containsExactly(1, 3, 2);
    }

    @Test
    @DisplayName(
            "weights: doubling that of the prime puts Skarrow last; halving it does not; unlike values never take part")
    void sensitivity() {
        assertThat(places(variation("Weight of priming volume doubled"))).containsExactly(1, 2, 3);
        assertThat(variation("Weight of priming volume doubled")
                        .get("same-order")
                        .asBoolean())
                .isFalse();
        assertThat(variation("Weight of priming volume halved")
                        .get("same-order")
                        .asBoolean())
                .isTrue();
        var all = Built.all(demo.results().get("weights").get("variations"));
        assertThat(all.stream().filter(v -> v.get("factor").asDouble() == 0.5)).hasSize(5);
        assertThat(all.stream().filter(v -> v.get("factor").asDouble() == 2)).hasSize(5);
        assertThat(variation("Without values under conditions that differ").get("totals"))
                .isEqualTo(variation("Weights as set").get("totals"));
    }

    @Test
    @DisplayName("since 1 October: the correction 59.1 → 51.9, on which no answer rests, and the source it stands in")
    void changes() {
        var changes = Built.all(demo.results().get("changes").get("changes"));

        assertThat(changes.stream().map(c -> c.get("kind").asText())).containsExactly("source", "value");
        var value = changes.get(1);
        assertThat(value.get("before").asText()).isEqualTo("59.1 mmHg");
        assertThat(value.get("after").asText()).isEqualTo("51.9 mmHg");
        assertThat(value.get("compared").asInt()).isZero();
        assertThat(changes.get(0).get("on").asText()).isEqualTo("2026-10-12");
        assertThat(brief).contains("59.1 mmHg, now 51.9 mmHg").contains("No answer rests on it");
    }

    private JsonNode variation(String what) {
        return Built.all(demo.results().get("weights").get("variations")).stream()
                .filter(v -> v.get("what").asText().startsWith(what))
                .findFirst()
                .orElseThrow(() -> new AssertionError(what));
    }

    private static List<Integer> places(JsonNode variation) {
        return Built.all(variation.get("totals")).stream()
                .map(t -> t.get("place").asInt())
                .toList();
    }
}
