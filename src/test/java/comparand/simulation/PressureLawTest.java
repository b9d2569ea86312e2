package comparand.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The physics behind every simulated truth, against numbers worked by hand. */
class PressureLawTest {

    /** exp(-5.64 + 1800/(T + 273)) exp(2.31 Hct) by hand: 1.1811 × 2 at 37 °C and 0.30, 1.4051 × 1.7815 at 28 °C and 0.25. */
    @ParameterizedTest
    @CsvSource({"37, 0, 1.1811", "37, 30, 2.3619", "28, 25, 2.5032", "37, 40, 2.9756"})
    void bloodIsAsViscousAsItsTemperatureAndCellsMakeIt(double temperature, double haematocrit, double viscosity) {
        var blood = Setting.blood(1, haematocrit / 3, temperature);

        assertThat(PressureLaw.viscosity(blood)).isCloseTo(viscosity, within(0.00005));
    }

    /** a = 20 and b = 16 solve ΔP = a Q + b Q² for 14, 36 and 66 mmHg at 0.5, 1.0 and 1.5 L/min; 47.04 mmHg at 1.2. */
    @ParameterizedTest
    @CsvSource({"0.5, 14", "1.0, 36", "1.5, 66", "1.2, 47.04"})
    void thePressureDropFollowsTheFlow(double flow, double drop) {
        var law = new PressureLaw(20, 16, 5);

        assertThat(law.drop(Setting.blood(flow, 12, 37))).isCloseTo(drop, within(1e-9));
    }

    /** From 37 °C and a haematocrit of 0.36 to 28 °C and 0.25: exp(1800 (1/301 - 1/310)) exp(-2.31 · 0.11) = 0.92267. */
    @Test
    void onlyTheLinearPartFeelsTheViscosity() {
        var law = new PressureLaw(30, 16, 5);
        var cold = Setting.blood(1, 12, 37).atTemperature(28).atHaemoglobin(25 / 3.0);

        assertThat(law.drop(cold)).isCloseTo(30 * 0.92267 + 16, within(30 * 0.000005));
    }

    /** 0.69 over 1.1811 exp(2.31 · 0.36) = 2.7130 mPa·s is 0.25433. */
    @Test
    void waterFlowsMoreEasilyAndAFilterAddsItsOwn() {
        var law = new PressureLaw(10, 2, 4);
        var home = Setting.blood(5, 12, 37);

        assertThat(law.drop(home.inWater())).isCloseTo(50 * 0.25433 + 50, within(50 * 0.00001));
        assertThat(law.drop(home.acrossFilter()) - law.drop(home)).isCloseTo(20, within(1e-9));
    }
}
