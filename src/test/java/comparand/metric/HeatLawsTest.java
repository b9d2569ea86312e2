package comparand.metric;

import static comparand.metric.FormulaLawsTest.q;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Heat that blood and water exchange: what one loses the other gains. */
class HeatLawsTest {

    /** J/(K·L), as the formulas print them: blood 1055 kg/m³ and 3600 J/(kg·K), water 992 and 4179. */
    private static final double BLOOD = 1.055 * 3600;

    private static final double WATER = 0.992 * 4179;

    private static Computed exchanger(
            double bloodIn, double bloodOut, double waterIn, double waterOut, double blood, double water) {
        return Computed.from(
                q("inlet-blood-temperature", bloodIn, "°C"),
                q("outlet-blood-temperature", bloodOut, "°C"),
                q("inlet-water-temperature", waterIn, "°C"),
                q("outlet-water-temperature", waterOut, "°C"),
                q("blood-flow", blood, "L/min"),
                q("water-flow", water, "L/min"));
    }

    @Property(tries = 200)
    @Label("with nothing lost, the share of the weaker stream is that of its own temperature, blood or water")
    void weakerStream(
            @ForAll @DoubleRange(min = 0.2, max = 7) double blood,
            @ForAll @DoubleRange(min = 0.2, max = 20) double water,
            @ForAll @DoubleRange(min = 0.05, max = 0.5) double share) {
        double rise = share * 10 * Math.min(1, WATER * water / (BLOOD * blood));
        double fall = rise * BLOOD * blood / (WATER * water);
        var run = exchanger(30, 30 + rise, 40, 40 - fall, blood, water);
        double bloodSide = run.under("ratio", "blood-side").value("performance-factor");
        double waterSide = run.under("ratio", "water-side").value("performance-factor");

        assertThat(run.under("ratio", "least-capacity-stream").value("performance-factor"))
                .isCloseTo(Math.max(bloodSide, waterSide), within(1e-8))
                .isCloseTo(share, within(1e-8));
    }

    @Test
    @DisplayName("the four temperatures of an exchanger: T_b and T_w, in and out")
    void letters() {
        for (var side : Side.values()) {
            var end = side == Side.INLET ? "in" : "out";
            assertThat(side.bloodTemperature())
                    .isEqualTo(Input.of(
                            end + "let-blood-temperature",
                            "T_b_" + end,
                            "blood temperature at the " + end + "let",
                            "°C"));
            assertThat(side.waterTemperature())
                    .isEqualTo(Input.of(
                            end + "let-water-temperature",
                            "T_w_" + end,
                            "water temperature at the " + end + "let",
                            "°C"));
        }
    }

    @Test
    @DisplayName(
            "2 L/min of blood against 1 L/min of water: 7596 over 4145.568 J/(K·min), times 0.3: 0.54970 (computed)")
    void waterIsTheWeakerStream() {
        assertThat(exchanger(30, 33, 40, 34.5, 2, 1)
                        .under("ratio", "least-capacity-stream")
                        .value("performance-factor"))
                .isCloseTo(0.54970, within(0.000005));
    }

    @Property(tries = 200)
    @Label("heat to the blood is what the water gives, grows with flow, and is lost while the blood is cooled")
    void heatOfBoth(
            @ForAll @DoubleRange(min = 0.2, max = 7) double flow, @ForAll @DoubleRange(min = -8, max = 8) double rise) {
        double watt = heat(flow, rise);

        assertThat(watt).isCloseTo(BLOOD * flow * rise / 60, within(1e-6));
        assertThat(heat(2 * flow, rise)).isCloseTo(2 * watt, within(1e-6));
        assertThat(heat(flow, -rise)).isCloseTo(-watt, within(1e-6));
    }

    private static double heat(double flow, double rise) {
        return exchanger(30, 30 + rise, 40, 40, flow, 10).value("heat-flow");
    }
}
