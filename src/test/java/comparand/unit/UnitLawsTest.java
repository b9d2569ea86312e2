package comparand.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;

/** Laws over many values: what goes there comes back, and offsets stay out of differences. */
class UnitLawsTest {

    private static final List<List<String>> FAMILIES = List.of(
            List.of("mmHg", "kPa", "cmH2O", "psi", "Torr", "mbar", "Pa"),
            List.of("L/min", "mL/min", "mL/s", "L/h"),
            List.of("g/dL", "g/L", "mg/dL", "mg/100 L", "mg/L"),
            List.of("°C", "K", "°F"),
            List.of("mL", "L", "µL", "nL", "cm³"),
            List.of("mmHg·min/L", "dyn·s/cm⁵", "Pa·s/m³"),
            List.of("min", "h", "s", "d"),
            List.of("%", "1"));

    @Provide
    Arbitrary<List<Unit>> pairs() {
        return Arbitraries.of(FAMILIES)
                .flatMap(family -> Arbitraries.of(family).list().ofSize(2))
                .map(names -> names.stream().map(Unit::of).toList());
    }

    @Property
    void thereAndBackIsExactlyTheSame(
            @ForAll("pairs") List<Unit> units,
            @ForAll @BigRange(min = "-1000", max = "100000") @Scale(4) BigDecimal value) {
        var there = units.get(0).convert(UcumTable.fraction(value.toPlainString()), units.get(1));

        assertThat(units.get(1).convert(there, units.get(0))).isEqualTo(UcumTable.fraction(value.toPlainString()));
    }

    @Property
    void doubleAndExactConversionAgree(
            @ForAll("pairs") List<Unit> units,
            @ForAll @BigRange(min = "-1000", max = "100000") @Scale(4) BigDecimal value) {
        double exact = units.get(0)
                .convert(UcumTable.fraction(value.toPlainString()), units.get(1))
                .doubleValue();

        double fast = units.get(0).convert(value.doubleValue(), units.get(1));

        // an offset can cancel most digits, so the scale of the intermediate kelvin counts too
        assertThat(fast).isCloseTo(exact, within(1e-12 * (Math.abs(exact) + 1000)));
    }

    @Property
    void aDifferenceConvertsByTheStepAlone(
            @ForAll("pairs") List<Unit> units,
            @ForAll @BigRange(min = "0", max = "1000") @Scale(2) BigDecimal from,
            @ForAll @BigRange(min = "0", max = "1000") @Scale(2) BigDecimal by) {
        var a = UcumTable.fraction(from.toPlainString());
        var d = UcumTable.fraction(by.toPlainString());

        var apart = units.get(0)
                .convert(a.add(d), units.get(1))
                .subtract(units.get(0).convert(a, units.get(1)));

        assertThat(apart).isEqualTo(d.multiply(units.get(0).stepIn(units.get(1))));
    }

    @Property
    void aPrintedNumberKeepsItsDigits(@ForAll @BigRange(min = "0", max = "99999") @Scale(3) BigDecimal value) {
        var text = value.toPlainString();

        assertThat(PrintedNumber.of(text).text()).isEqualTo(text);
        assertThat(PrintedNumber.of(text).decimals()).isEqualTo(Math.max(0, value.scale()));
        assertThat(PrintedNumber.read(text.replace('.', ','), DecimalSign.COMMA)
                        .orThrow()
                        .value())
                .isEqualByComparingTo(value);
    }
}
