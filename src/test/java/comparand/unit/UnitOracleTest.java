package comparand.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import javax.measure.format.UnitFormat;
import org.fhir.ucum.Decimal;
import org.fhir.ucum.UcumEssenceService;
import org.fhir.ucum.UcumException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import systems.uom.ucum.format.UCUMFormat;

/**
 * Conversions against two general-purpose unit libraries, test scope only: indriya 2.2.4 with systems-ucum 2.2, and
 * org.fhir:ucum 1.0.10.
 */
class UnitOracleTest {

    @ParameterizedTest(name = "{0} to {1}")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {
                "mm[Hg], kPa",
                "kPa, mm[Hg]",
                "cm[H2O], mm[Hg]",
                "[psi], mm[Hg]",
                "bar, mm[Hg]",
                "atm, mm[Hg]",
                "dyn/cm2, Pa",
                "mm[Hg].min/L, dyn.s/cm5",
                "mm[Hg].min/L, Pa.s/m3",
                "cP, mPa.s",
                "L/min, mL/min",
                "L/min, m3/s",
                "mL/s, L/min",
                "um3, uL",
                "nL, uL",
                "[in_i], cm",
                "[lb_av], kg",
                "g/dL, g/L",
                "mg/dL, g/L",
                "g/(100.L), mg/L",
                "%, 1",
                "mL/min/m2, L/min/m2",
                "h, min",
                "kat, mol/s",
                "mmol/L, mol/m3"
            })
    void ratioConversionsAgreeWithIndriya(String from, String to) throws Exception {
        UnitFormat format = UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE);
        double theirs = format.parse(from).getConverterToAny(format.parse(to)).convert(12.5);

        double ours = Ucum.read(from).orThrow().convert(12.5, Ucum.read(to).orThrow());

        // both are double arithmetic on exact factors: a few units in the last place
        assertThat(ours).isCloseTo(theirs, within(Math.abs(theirs) * 1e-14));
    }

    @ParameterizedTest(name = "{0} {1} is {2} {3}")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {
                "37, Cel, 310.15, K",
                "98.6, [degF], 37, Cel",
                "0, K, -273.15, Cel",
                "-40, Cel, -40, [degF]",
                "212, [degF], 373.15, K"
            })
    @DisplayName("temperatures follow the definitions K = °C + 273.15 and °C = (°F - 32)/1.8, exactly")
    void temperaturesAreExact(String value, String from, String expected, String to) {
        var exact = Unit.of(from).convert(UcumTable.fraction(value), Unit.of(to));

        assertThat(exact).isEqualTo(UcumTable.fraction(expected));
    }

    @ParameterizedTest(name = "{0} to {1}")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {
                "mm[Hg], kPa",
                "cm[H2O], Pa",
                "L/min, mL/min",
                "g/dL, g/L",
                "mL/min/m2, L/min/m2",
                "dyn/cm2, Pa",
                "10*9/L, /uL",
                "[Ch], mm"
            })
    void ratioConversionsAgreeWithUcumJava(String from, String to) throws UcumException, IOException {
        try (var essence = UnitOracleTest.class.getResourceAsStream("/ucum-essence.xml")) {
            var service = new UcumEssenceService(essence);
            double theirs = new BigDecimal(service.convert(new Decimal("12.500000000000000"), from, to)
                            .asDecimal())
                    .doubleValue();

            double ours = Ucum.read(from).orThrow().convert(12.5, Ucum.read(to).orThrow());

            assertThat(ours)
                    .isCloseTo(
                            theirs,
                            within(Math.abs(theirs)
                                    * 1e-9)); // that library keeps as many digits as it is given, not ratios
        }
    }

    @Test
    @DisplayName("1 mmHg·min/L is 79.993 dyn·s/cm⁵: 60 s/min × 1333.22 dyn/cm² per 1000 cm³ (from the definitions)")
    void resistanceUnits() {
        double dyn = Unit.of("mmHg·min/L").convert(1.0, Unit.of("dyn·s/cm⁵"));

        assertThat(dyn).isCloseTo(79.9932, within(5e-5));
    }
}
