package comparand.metric;

import static comparand.metric.FormulaLawsTest.q;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Oxygen transfer of blood as it came in, brought to standard blood at the inlet. */
class StandardInletTest {

    private static double shift(double flow, double hb, double from, double to) {
        var standard = OxygenTransfer.metric().inletStandard().orElseThrow();
        return standard.shift()
                .of(new Inputs(
                        Map.of("blood-flow", flow, "haemoglobin", hb, InletStandard.FROM, from, InletStandard.TO, to),
                        OxygenTransfer.metric().standardDefinition()));
    }

    @Test
    @DisplayName(
            "1.5 L/min and 12 g/dL: one point of inlet saturation moves transfer by 2.412 mL/min, 10 · 1.5 · 1.34 ·"
                    + " 0.12 (computed); blood that came in fuller would have taken up more at 65 %")
    void fullerBlood() {
        assertThat(shift(1.5, 12, 66, 65)).isCloseTo(2.412, within(1e-9));
        assertThat(shift(1.5, 12, 70, 65)).isCloseTo(12.06, within(1e-9));
        assertThat(shift(1.5, 12, 60, 65)).isCloseTo(-12.06, within(1e-9));
    }

    @Property(tries = 200)
    @Label("to standard blood at the inlet: as transfer would have been with that blood and the outlet unchanged")
    void standardInletByContents(
            @ForAll @DoubleRange(min = 0.2, max = 7) double flow,
            @ForAll @DoubleRange(min = 6, max = 16) double hb,
            @ForAll @DoubleRange(min = 50, max = 80) double from) {
        assertThat(transfer(flow, hb, from) + shift(flow, hb, from, 65))
                .isCloseTo(transfer(flow, hb, 65), within(1e-6));
    }

    private static double transfer(double flow, double hb, double inlet) {
        return Computed.from(
                        q("blood-flow", flow, "L/min"),
                        q("haemoglobin", hb, "g/dL"),
                        q("inlet-saturation", inlet, "%"),
                        "inlet-po2=36 mmHg",
                        "outlet-saturation=99 %",
                        "outlet-po2=300 mmHg")
                .value("oxygen-transfer");
    }
}
