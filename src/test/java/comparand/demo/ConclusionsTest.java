package comparand.demo;

import static comparand.demo.DemoOutputs.difference;
import static comparand.demo.DemoOutputs.inBoth;
import static comparand.demo.DemoOutputs.mark;
import static comparand.demo.DemoOutputs.nowhere;
import static comparand.demo.DemoOutputs.rounded;
import static comparand.demo.DemoOutputs.shown;
import static comparand.demo.DemoOutputs.texts;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import comparand.support.Built;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * What must come out of the demo unaided, in the results and in both documents; and what a quick reader would say instead
 * and must not come out. The intervals were computed independently of this program (Welch, t interval, range for one
 * further unit) from the printed means, SDs and numbers of the scenario.
 */
class ConclusionsTest {

    private final Built demo = Built.demo();

    @Test
    @DisplayName("1: on one footing the primes are 47, 53 and 75 mL: Quillane is smallest, by more than the margin")
    void primesOnOneFooting() {
        var mirrowen = demo.pair("B11", "B01");
        var skarrow = demo.pair("B16", "B01");

        assertThat(demo.comparand("B11").get("summary").get("value").asDouble()).isEqualTo(53);
        assertThat(demo.comparand("B16").get("summary").get("value").asDouble()).isEqualTo(75);
        assertThat(mirrowen.get("standing").asText()).isEqualTo("same-after-conversion");
        assertThat(difference(mirrowen)).isEqualTo(6);
        assertThat(difference(skarrow)).isEqualTo(28);
        assertThat(mirrowen.get("answer").get("sentence").asText())
                .contains("higher by more than the margin of 5\u00a0mL");
        assertThat(skarrow.get("answer").get("difference").get("verdict").asText())
                .isEqualTo("higher-beyond-margin");
        inBoth(
                "Mirrowen 12, priming volume: +6 mL, higher by more than the margin of 5 mL",
                "Higher by more than the margin of 5 mL");
        assertThat(demo.pdf()).contains("53 mL").contains("75 mL").doesNotContain("smallest prime, 38");
    }

    @Test
    @DisplayName(
            "2: 72.4 against 65: +7.4 (3.1 to 11.7), higher, 10 not settled; 65 inside the range for one further unit")
    void againstAFigureWithoutSpread() {
        var pair = demo.pair("pressure-drop/quillane-15/1.5 L/min", "B05");
        var answer = pair.get("answer");

        assertThat(answer.get("kind").asText()).isEqualTo("against-figure");
        assertThat(shown(pair)).isEqualTo("+7.4 (3.1 to 11.7)");
        assertThat(answer.get("difference").get("verdict").asText()).isEqualTo("higher-margin-open");
        assertThat(rounded(answer.get("one-more"), 0)).isEqualTo("61 to 84");
        assertThat(rounded(answer.get("mean"), 1)).isEqualTo("68.1 to 76.7");
        assertThat(answer.get("sentence").asText())
                .contains("whether by as much as 10\u00a0mmHg is not settled")
                .contains("the source gives no spread and no number")
                .contains("inside the range expected for one further unit (61 to 84)");
        inBoth(
                "inside the range expected for one further unit (61 to 84)",
                "inside the range expected for one further unit (61 to 84)");
        nowhere("fails", "specification");
    }

    @Test
    @DisplayName("3: 73.9 ± 4.6 unexplained: -1.5 (-7.6 to 4.6) or (-14.0 to 11.0); both readings are printed")
    void bothReadingsOfAnUnexplainedSpread() {
        var pair = demo.pair("pressure-drop/quillane-15/1.5 L/min", "B21");
        var answer = pair.get("answer");

        assertThat(answer.get("kind").asText()).isEqualTo("either-reading");
        assertThat(shown(pair)).isEqualTo("−1.5 (−7.6 to 4.6)");
        assertThat(answer.get("difference").get("verdict").asText()).isEqualTo("none-as-large-as-margin");
        assertThat(answer.get("if-standard-error").get("verdict").asText()).isEqualTo("not-settled");
        assertThat(rounded(answer.get("if-standard-error").get("interval"), 1)).isEqualTo("−14.0 to 11.0");
        inBoth(
                "read as standard error (−1.5 (−14.0 to 11.0)): not settled",
                "read as standard error (−1.5 (−14.0 to 11.0)): not settled");
        nowhere("agrees with us", "independent laboratory agrees");
    }

    @Test
    @DisplayName("6: Ardley's haemolysis is a formula away: 9.3 mg/100 L, at another haematocrit: shown, not compared")
    void haemolysisByAnotherFormula() {
        var pair = demo.pair("haemolysis/mirrowen-12/1.0 L/min", "B24");

        assertThat(pair.get("standing").asText()).isEqualTo("conditions-differ");
        assertThat(demo.comparand("B24").get("summary").get("value").asDouble()).isCloseTo(9.3, within(1e-12));
        assertThat(mark(pair, "formula")).isEqualTo("made-same");
        assertThat(mark(pair, "haematocrit")).isEqualTo("differs");
        assertThat(pair.get("answer").has("difference")).isFalse();
        inBoth("[9.3 (2.4)]", "[9.3]");
        nowhere("three times");
    }

    @Test
    @DisplayName("7: 51.9 was found at Hb 10: shown, not compared; the direction of the distortion is stated")
    void publishedAtAnotherHaemoglobin() {
        var pair = demo.pair("pressure-drop/mirrowen-12/1.0 L/min", "B22");

        assertThat(pair.get("standing").asText()).isEqualTo("conditions-differ");
        assertThat(mark(pair, "haemoglobin")).isEqualTo("differs");
        assertThat(texts(pair.get("distortions")))
                .anySatisfy(s -> assertThat(s).contains("10\u00a0g/dL there").contains("published value lower"));
        assertThat(pair.get("answer").get("kind").asText()).isEqualTo("shown");
        inBoth(
                "By itself this makes the published value lower: more red cells make blood more viscous",
                "By itself this makes the published value lower");
        inBoth("[51.9 (3.1)]", "[51.9]");
        nowhere("P = 0.01", "pushes harder than published");
    }

    @Test
    @DisplayName(
            "8: Mirrowen against Quillane at 1.0: +17.2 (12.8 to 21.6), higher by more than 10, for any margin below 12.8")
    void theFirmestFinding() {
        var pair = demo.pair("pressure-drop/mirrowen-12/1.0 L/min", "pressure-drop/quillane-15/1.0 L/min");

        assertThat(pair.get("standing").asText()).isEqualTo("same");
        assertThat(shown(pair)).isEqualTo("+17.2 (12.8 to 21.6)");
        assertThat(pair.get("answer").get("difference").get("verdict").asText()).isEqualTo("higher-beyond-margin");
        assertThat(pair.get("answer").get("difference").get("flips-at").asDouble())
                .isCloseTo(12.8, within(0.05));
        inBoth(
                "+17.2 mmHg (95 % CI 12.8 to 21.6): higher by more than the margin of 10 mmHg",
                "Higher by more than the margin of 10 mmHg");
        inBoth("holds for any margin below 12.8", "holds for any margin below 12.8");
    }

    @Test
    @DisplayName(
            "9: Skarrow against Quillane: -14.6 (-19.5 to -9.7) at 1.5 and -8.5 (-11.9 to -5.1) at 1.0; 10 not settled")
    void lowerAndJustNotSettled() {
        var high = demo.pair("pressure-drop/skarrow-kid/1.5 L/min", "pressure-drop/quillane-15/1.5 L/min");
        var low = demo.pair("pressure-drop/skarrow-kid/1.0 L/min", "pressure-drop/quillane-15/1.0 L/min");

        assertThat(shown(high)).isEqualTo("−14.6 (−19.5 to −9.7)");
        assertThat(shown(low)).isEqualTo("−8.5 (−11.9 to −5.1)");
        assertThat(List.of(high, low))
                .allSatisfy(p -> assertThat(
                                p.get("answer").get("difference").get("verdict").asText())
                        .isEqualTo("lower-margin-open"));
        inBoth(
                "−14.6 mmHg (95 % CI −19.5 to −9.7): lower; whether by as much as 10 mmHg is not settled",
                "Lower; whether by as much as 10 mmHg is not settled");
    }

    @Test
    @DisplayName(
            "10: haemolysis: Skarrow -0.5 (-3.4 to 2.4), none as large as 5; Mirrowen +2.5 (-0.6 to 5.6), not settled")
    void twoDifferentSentencesForHaemolysis() {
        var skarrow = demo.pair("haemolysis/skarrow-kid/1.0 L/min", "haemolysis/quillane-15/1.0 L/min");
        var mirrowen = demo.pair("haemolysis/mirrowen-12/1.0 L/min", "haemolysis/quillane-15/1.0 L/min");

        assertThat(shown(skarrow)).isEqualTo("−0.5 (−3.4 to 2.4)");
        assertThat(shown(mirrowen)).isEqualTo("+2.5 (−0.6 to 5.6)");
        assertThat(skarrow.get("answer").get("sentence").asText())
                .isEqualTo("no difference as large as 5\u00a0mg/100\u00a0L");
        assertThat(mirrowen.get("answer").get("sentence").asText()).startsWith("not settled");
        inBoth("no difference as large as 5 mg/100 L", "No difference as large as 5 mg/100 L");
        inBoth(
                "not settled: compatible with 5.6 mg/100 L higher and with 0.6 mg/100 L lower",
                "Not settled: compatible with 5.6 mg/100 L higher");
    }

    @Test
    @DisplayName(
            "11: bubbles: Skarrow -4.4 points (-7.8 to -1.0), 5 not settled, adjusted P said; Mirrowen only with its filter")
    void bubblesAndTheNumberOfComparisons() {
        var skarrow = demo.pair(
                "bubble-volume-reduction/skarrow-kid/1.0 L/min", "bubble-volume-reduction/quillane-15/1.0 L/min");
        var with = demo.pair(
                "mirrowen-12/oxygenator + exchanger + filter, 1.0 L/min",
                "bubble-volume-reduction/quillane-15/1.0 L/min");
        var without = demo.pair(
                "mirrowen-12/oxygenator + exchanger, 1.0 L/min", "bubble-volume-reduction/quillane-15/1.0 L/min");

        assertThat(shown(skarrow)).isEqualTo("−4.4 (−7.8 to −1.0)");
        assertThat(skarrow.get("answer").get("adjusted-p").asDouble()).isGreaterThanOrEqualTo(0.05);
        assertThat(texts(skarrow.get("remarks")))
                .anySatisfy(s -> assertThat(s).contains("direction is not clear (adjusted P"));
        assertThat(shown(with)).isEqualTo("−1.1 (−4.1 to 1.9)");
        assertThat(with.get("answer").get("difference").get("verdict").asText()).isEqualTo("none-as-large-as-margin");
        assertThat(without.get("standing").asText()).isEqualTo("different-quantity");
        int family = demo.results().get("run").get("family-size").asInt();
        assertThat(family).isGreaterThan(8);
        inBoth(
                "After allowing for %d comparisons with the present device the direction is not clear"
                        .formatted(family),
                "After allowing for %d comparisons".formatted(family));
        assertThat(demo.pair("bubble-volume-reduction/skarrow-kid/1.0 L/min", "B26")
                        .get("standing")
                        .asText())
                .isEqualTo("different-quantity");
    }

    @Test
    @DisplayName(
            "12: exchanger: Skarrow +0.04 (0.01 to 0.07), Mirrowen -0.07 (-0.10 to -0.04): direction clear, 0.05 not settled")
    void exchanger() {
        var skarrow = demo.pair("performance-factor/skarrow-kid/1.0 L/min", "performance-factor/quillane-15/1.0 L/min");
        var mirrowen =
                demo.pair("performance-factor/mirrowen-12/1.0 L/min", "performance-factor/quillane-15/1.0 L/min");

        assertThat(shown(skarrow)).isEqualTo("+0.04 (0.01 to 0.07)");
        assertThat(shown(mirrowen)).isEqualTo("−0.07 (−0.10 to −0.04)");
        inBoth(
                "+0.04 (95 % CI 0.01 to 0.07): higher; whether by as much as 0.05 is not settled",
                "Higher; whether by as much as 0.05 is not settled");
        inBoth(
                "−0.07 (95 % CI −0.10 to −0.04): lower; whether by as much as 0.05 is not settled",
                "Lower; whether by as much as 0.05 is not settled");
    }

    @Test
    @DisplayName("4: oxygen transfer of Ardley at 65 % inlet saturation is 87.7 (3.1): +1.9 (-2.5 to 6.2), not settled")
    void anotherInletMadeSame() {
        var pair = demo.pair("oxygen-transfer/quillane-15/1.5 L/min", "B23");

        assertThat(pair.get("standing").asText()).isEqualTo("same-after-conversion");
        assertThat(demo.comparand("B23").get("summary").get("shown").asText()).isEqualTo("87.7 (3.1)");
        assertThat(shown(pair)).isEqualTo("+1.9 (−2.5 to 6.2)");
        assertThat(mark(pair, "inlet-saturation")).isEqualTo("made-same");
        assertThat(pair.get("answer").get("difference").get("verdict").asText()).isEqualTo("not-settled");
        inBoth("+1.9 (−2.5 to 6.2)", "Brought from inlet oxygen saturation 60 % to 65 %");
        assertThat(demo.pdf()).doesNotContain("−10.2");
    }

    @Test
    @DisplayName("5: 78 mL/min without volume basis: 7.9 lower read at STPD, 5.7 higher read at BTPS; not compared")
    void aVolumeWithoutItsBasis() {
        var pair = demo.pair("oxygen-transfer/mirrowen-12/1.2 L/min", "B14");

        assertThat(pair.get("standing").asText()).isEqualTo("not-reported");
        inBoth("ours is 7.9 mL/min lower; read at BTPS", "it is 64 mL/min at STPD, and ours is 5.7 mL/min higher");
    }

    @Test
    @DisplayName("13: outlets of all runs at 1.0 L/min are full: the test shows the blood, not the device, and says so")
    void fullOutletsShowTheBlood() {
        for (var device : List.of("quillane-15", "mirrowen-12", "skarrow-kid")) {
            assertThat(texts(demo.comparand("oxygen-transfer/" + device + "/1.0 L/min")
                                            .get("steps"))
                                    .toString()
                            + demo.comparand("oxygen-transfer/" + device + "/1.0 L/min")
                                    .get("steps"))
                    .contains("at least 98")
                    .contains("not the device");
        }
        assertThat(demo.pdf()).contains("this shows haemoglobin and the blood at the inlet, not the device");
    }

    @Test
    @DisplayName("what lies beside: bounds, kPa, other water flow, figure reading, and what is set aside")
    void theRestOfTheBenchmarkValues() {
        assertThat(demo.pair("pressure-drop/mirrowen-12/1.2 L/min", "B13")
                        .get("standing")
                        .asText())
                .isEqualTo("not-reported");
        assertThat(demo.comparand("B13").get("summary").get("shown").asText()).isEqualTo("70");
        assertThat(demo.pdf())
                .contains("[70?]")
                .contains("[≤ 78?]")
                .contains("[0.70]")
                .contains("[61?]")
                .contains("55.0 ± 0.8");
        assertThat(demo.pair("oxygen-transfer/skarrow-kid/1.5 L/min", "B18")
                        .get("answer")
                        .get("meeting")
                        .asInt())
                .isEqualTo(6);
        var aside = Built.all(demo.results().get("set-aside")).stream()
                .collect(Collectors.toMap(
                        a -> a.get("value").asText(), a -> a.get("reason").asText()));
        assertThat(aside)
                .containsEntry("B10", "superseded")
                .containsEntry("B33", "same-study")
                .containsEntry("B34", "retracted")
                .hasSize(3);
    }
}
