package comparand.demo;

import static comparand.demo.DemoOutputs.inBoth;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import comparand.stat.Holm;
import comparand.stat.MeanDifference;
import comparand.stat.Moments;
import comparand.support.Built;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What belongs to the demo's answers: the number of comparisons, and what else might have been supposed. */
class StatisticsConclusionsTest {

    private final Built demo = Built.demo();

    /**
     * The adjusted P of bubbles among the eight bench comparisons of the scenario's table, from its printed means and SDs of
     * six units each: pressure drops, exchangers, haemolysis and Skarrow's bubbles.
     */
    @Test
    @DisplayName("11: bubbles among eight comparisons: adjusted P 0.054, from the printed means and SDs")
    void bubblesAmongEightComparisons() {
        double[][] ours = {
            {58.7, 3.8}, {33.0, 2.4}, {57.8, 3.5}, {0.64, 0.03}, {0.75, 0.02}, {10.9, 2.6}, {7.9, 2.4}, {88.7, 3.1}
        };
        double[][] present = {
            {41.5, 2.9}, {41.5, 2.9}, {72.4, 4.1}, {0.71, 0.02}, {0.71, 0.02}, {8.4, 2.1}, {8.4, 2.1}, {93.1, 2.0}
        };
        var p = IntStream.range(0, ours.length)
                .mapToObj(i -> MeanDifference.of(
                                new Moments(ours[i][0], ours[i][1], 6).estimate(),
                                new Moments(present[i][0], present[i][1], 6).estimate())
                        .p())
                .toList();
        assertThat(Holm.adjust(p).get(7)).isCloseTo(0.054, within(0.0005));
    }

    @Test
    @DisplayName("3: what would change if every unexplained spread were a standard error, and what if not")
    void scenariosOfTheDossier() {
        var scenarios = Built.all(demo.results().get("scenarios"));

        assertThat(scenarios).hasSize(5);
        assertThat(scenarios.get(0).get("changed").asInt()).isEqualTo(1);
        assertThat(scenarios.get(0).get("changes").get(0).get("shown-after").asText())
                .isEqualTo("−2 (−14 to 11)");
        assertThat(scenarios.get(1).get("changed").asInt()).isZero();
        assertThat(scenarios.get(1).get("left-out").asInt()).isEqualTo(18);
        assertThat(scenarios.get(3).get("changes").get(0).get("shown-after").asText())
                .isEqualTo("+6.8 (2.1 to 11.5)");
        inBoth(
                "+6.8 (2.1 to 11.5): higher; whether by as much as 10 mmHg is not settled",
                "+6.8 (2.1 to 11.5): higher; whether by as much as 10 mmHg is not settled");
        inBoth("No answer changes among 44 pairs; 18 more fall away", "No answer changes among 44 pairs");
    }
}
