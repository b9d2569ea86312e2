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

/** Gas as it is in the body, and gas at standard state. */
class GasVolumeTest {

    @Test
    @DisplayName(
            "BTPS to STPD: 0.82616 at 760 mmHg, 0.75663 at 700 (computed; MacIntyre et al., Eur Respir J 2005, from memory,"
                    + " table 5: (PB - PH₂O)/760 · 273.15/310.15, vapour 47.067 mmHg)")
    void factor() {
        assertThat(GasVolume.fromBtpsToStpd(760)).isCloseTo(0.82616, within(0.000005));
        assertThat(GasVolume.fromBtpsToStpd(700)).isCloseTo(0.75663, within(0.000005));
        // gas that is nothing but vapour is no dry gas
        assertThat(GasVolume.fromBtpsToStpd(47.067)).isZero();
    }

    @Property(tries = 200)
    @Label("a volume and a flow go to standard state by one factor, (PB - 47) / 863 as textbooks print it")
    void oneFactor(@ForAll @DoubleRange(min = 550, max = 800) double pb) {
        double flow = Computed.from("exhaust-gas-flow-btps=1 L/min", q("barometric-pressure", pb, "mmHg"))
                .value("exhaust-gas-flow-stpd");

        assertThat(GasVolume.fromBtpsToStpd(pb)).isCloseTo(flow, within(1e-9));
        // 47 stands for 47.067 and 863 for 862.95
        assertThat(GasVolume.fromBtpsToStpd(pb)).isCloseTo((pb - 47) / 863, within((0.5 + 0.5) / 863));
    }
}
