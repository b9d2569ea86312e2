package comparand.unit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TradeSpellingTest {

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(
            delimiter = '|',
            useHeadersInDisplayName = false,
            value = {
                "mmHg | mm[Hg]",
                "mm Hg | mm[Hg]",
                "cmH2O | cm[H2O]",
                "cmH₂O | cm[H2O]",
                "kPa | kPa",
                "mbar | mbar",
                "psi | [psi]",
                "°C | Cel",
                "degC | Cel",
                "°F | [degF]",
                "µL | uL",
                "μL | uL",
                "µm | um",
                "m² | m2",
                "cm² | cm2",
                "g/dL | g/dL",
                "g/dl | g/dl",
                "mg/100 L | mg/(100.L)",
                "mg/100mL | mg/(100.mL)",
                "g/(100.L) | g/(100.L)",
                "mL/min/m² | mL/min/m2",
                "L/min/m² | L/min/m2",
                "mL/kg/min | mL/kg/min",
                "l/min | l/min",
                "lpm | L/min",
                "10⁹/L | 10*9/L",
                "×10⁹/L | 10*9/L",
                "10^9/L | 10^9/L",
                "mmHg·min/L | mm[Hg].min/L",
                "dyn·s/cm⁵ | dyn.s/cm5",
                "dyn·s·cm⁻⁵ | dyn.s.cm-5",
                "cP | cP",
                "mPa·s | mPa.s",
                "% | %",
                "percentage points | %",
                "WU | [wood'U]",
                "Fr | [Ch]",
                "lb | [lb_av]",
                "inch | [in_i]",
                "min | min",
                "h | h",
                "hours | h",
                "mEq/L | meq/L",
                "mmol/L | mmol/L",
                "kg | kg",
                "1/min | 1/min",
                "pH | [pH]"
            })
    void tradeSpellingsAreReadAsUcum(String written, String code) {
        var unit = TradeSpelling.read(written).orThrow();

        assertThat(unit.code()).isEqualTo(code);
        assertThat(unit.spelling()).isEqualTo(written);
    }

    @ParameterizedTest(name = "{0} is no unit")
    @ValueSource(
            strings = {
                "mmHgg",
                "L//min",
                "(m",
                "m)",
                "m[Hg",
                "foo",
                "kpa",
                "L/",
                "{open",
                "m^2^3",
                "10*x",
                "a b c d e f g",
                "0",
                "m999",
                "/"
            })
    void whatIsNoUnitIsRefusedWithItsPlace(String written) {
        TradeSpelling.read(written)
                .fold(
                        unit -> {
                            throw new AssertionError(written + " was read as " + unit.code());
                        },
                        fault -> {
                            assertThat(fault.at()).isBetween(0, written.length());
                            assertThat(fault.problem()).isNotBlank().doesNotEndWith(".");
                            assertThat(fault.fix()).isNotBlank();
                            return null;
                        });
    }

    @Test
    void aNearMissIsSuggested() {
        assertThat(fix("kpa")).contains("kPa");
        assertThat(fix("mmHgg")).contains("mmHg");
    }

    @Test
    void gigaPerLitreIsRefusedBecauseItMeansTwoThings() {
        assertThat(fix("G/L")).contains("10⁹/L");
    }

    @Test
    void deepBracketsAndHugeExponentsAreRefused() {
        assertThat(fix("(".repeat(60) + "m" + ")".repeat(60))).isNotBlank();
        assertThat(fix("m1000000000000")).isNotBlank();
    }

    private static String fix(String written) {
        return TradeSpelling.read(written).fold(unit -> "", Parsed.Fault::fix);
    }
}
