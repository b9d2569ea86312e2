package comparand.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** What physics and arithmetic demand of the formulas of blood and gas, whatever the numbers. */
class FormulaLawsTest {

    private static final double TINY = 1e-9;

    private static Computed blood(double hb, double saturation, double po2) {
        return Computed.from(
                q("haemoglobin", hb, "g/dL"), q("outlet-saturation", saturation, "1"), q("outlet-po2", po2, "mmHg"));
    }

    /** A quantity with all digits of the number. */
    static String q(String id, double number, String unit) {
        return id + "="
                + new BigDecimal(number).setScale(12, RoundingMode.HALF_EVEN).toPlainString()
                + (unit.equals("1") ? "" : " " + unit);
    }

    private static double content(double hb, double saturation, double po2) {
        return blood(hb, saturation, po2).value("outlet-oxygen-content");
    }

    @Property(tries = 200)
    @Label("oxygen content is the same from g/L, per cent and kPa")
    void contentInOtherUnits(
            @ForAll @DoubleRange(min = 4, max = 18) double hb,
            @ForAll @DoubleRange(min = 0.2, max = 1) double s,
            @ForAll @DoubleRange(min = 10, max = 600) double p) {
        double other = Computed.from(
                        q("haemoglobin", 10 * hb, "g/L"),
                        q("outlet-saturation", 100 * s, "%"),
                        q("outlet-po2", p * 0.133322, "kPa"))
                .value("outlet-oxygen-content");

        assertThat(other).isCloseTo(content(hb, s, p), within(1e-8));
    }

    @Property(tries = 200)
    @Label("more haemoglobin, saturation or pressure never carries less oxygen")
    void contentRises(
            @ForAll @DoubleRange(min = 4, max = 18) double hb,
            @ForAll @DoubleRange(min = 0.2, max = 0.9) double s,
            @ForAll @DoubleRange(min = 10, max = 500) double p) {
        double base = content(hb, s, p);

        assertThat(content(hb + 0.5, s, p)).isGreaterThan(base);
        assertThat(content(hb, s + 0.05, p)).isGreaterThan(base);
        assertThat(content(hb, s, p + 10)).isGreaterThan(base);
    }

    @Property(tries = 200)
    @Label("transfer is flow times transfer per litre, in mL/min as in L/min")
    void transferPerLitre(
            @ForAll @DoubleRange(min = 0.1, max = 7) double q,
            @ForAll @DoubleRange(min = 5, max = 12) double in,
            @ForAll @DoubleRange(min = 12, max = 20) double out) {
        var whole = Computed.from(
                q("blood-flow", q, "L/min"),
                q("inlet-oxygen-content", in, "mL/dL"),
                q("outlet-oxygen-content", out, "mL/dL"));
        double transfer = whole.value("oxygen-transfer");

        assertThat(whole.value("oxygen-transfer-per-litre") * q).isCloseTo(transfer, within(1e-8));
        assertThat(whole.with(q("blood-flow", 1000 * q, "mL/min")).value("oxygen-transfer"))
                .isCloseTo(transfer, within(1e-8));
    }

    @Property(tries = 200)
    @Label("saturation rises with oxygen pressure and with pH, and stays between 0 and 1")
    void saturationRises(
            @ForAll @DoubleRange(min = 1, max = 600) double p, @ForAll @DoubleRange(min = 6.9, max = 7.7) double ph) {
        double s = OxygenDissociation.saturation(OxygenDissociation.virtualPressure(p, ph));

        assertThat(s).isBetween(0.0, 1.0);
        assertThat(OxygenDissociation.saturation(OxygenDissociation.virtualPressure(p + 1, ph)))
                .isGreaterThan(s);
        assertThat(OxygenDissociation.saturation(OxygenDissociation.virtualPressure(p, ph + 0.05)))
                .isGreaterThan(s);
    }

    @Property(tries = 300)
    @Label("Ellis undoes equation 1 of Severinghaus")
    void exactInverse(@ForAll @DoubleRange(min = 1, max = 300) double p) {
        // at 300 mmHg the curve is flat: one part in 10^16 of saturation is one in 10^12 of pressure
        assertThat(OxygenDissociation.pressure(OxygenDissociation.saturation(p)))
                .isCloseTo(p, within(1e-8));
    }

    @Property(tries = 300)
    @Label("equation 1 undoes Ellis")
    void exactInverseTheOtherWay(@ForAll @DoubleRange(min = 0.01, max = 0.99) double s) {
        assertThat(OxygenDissociation.saturation(OxygenDissociation.pressure(s)))
                .isCloseTo(s, within(1e-12));
    }

    @Property(tries = 200)
    @Label("Kelman's saturation rises with pressure over what is met in blood")
    void kelmanRises(@ForAll @DoubleRange(min = 15, max = 400) double p) {
        assertThat(OxygenDissociation.kelmanSaturation(p + 1)).isGreaterThan(OxygenDissociation.kelmanSaturation(p));
    }

    @Property(tries = 200)
    @Label("the two curves of human blood agree to 2 percentage points at pH 7.4, 37 °C and 40 mmHg")
    void curvesAgree(@ForAll @DoubleRange(min = 20, max = 300) double p) {
        assertThat(OxygenDissociation.kelmanSaturation(p)).isCloseTo(OxygenDissociation.saturation(p), within(0.02));
    }

    @Property(tries = 200)
    @Label("shunt lies between 0 and 1, falls as the outlet fills, and mixes back to the outlet's content")
    void shuntMixesBack(
            @ForAll @DoubleRange(min = 5, max = 10) double in,
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double between,
            @ForAll @DoubleRange(min = 14, max = 20) double ideal) {
        double out = in + between * (ideal - in);
        double shunt = shunt(in, out, ideal);

        assertThat(shunt).isBetween(0.0, 1.0);
        assertThat(shunt(in, out + 0.01, ideal)).isLessThan(shunt);
        assertThat(shunt * in + (1 - shunt) * ideal).isCloseTo(out, within(TINY));
    }

    private static double shunt(double in, double out, double ideal) {
        return Computed.from(
                        q("inlet-oxygen-content", in, "mL/dL"),
                        q("outlet-oxygen-content", out, "mL/dL"),
                        q("ideal-oxygen-content", ideal, "mL/dL"))
                .value("shunt-fraction");
    }

    private static double carbonDioxide(double pco2, double ph, double hb, double s) {
        return Computed.from(
                        q("outlet-pco2", pco2, "mmHg"),
                        q("outlet-ph", ph, "[pH]"),
                        q("haemoglobin", hb, "g/dL"),
                        q("outlet-saturation", s, "1"))
                .value("outlet-carbon-dioxide-content");
    }

    @Property(tries = 200)
    @Label("more carbon dioxide pressure is more content; fuller of oxygen, blood carries less of it (Haldane)")
    void haldane(
            @ForAll @DoubleRange(min = 15, max = 90) double pco2,
            @ForAll @DoubleRange(min = 7.1, max = 7.6) double ph,
            @ForAll @DoubleRange(min = 6, max = 18) double hb,
            @ForAll @DoubleRange(min = 0.3, max = 0.9) double s) {
        double base = carbonDioxide(pco2, ph, hb, s);

        assertThat(carbonDioxide(pco2 + 1, ph, hb, s)).isGreaterThan(base);
        assertThat(carbonDioxide(pco2, ph, hb, s + 0.05)).isLessThan(base);
    }

    @Property(tries = 200)
    @Label("blood that gives off carbon dioxide gives it off whichever model is used")
    void transferHasItsSign(
            @ForAll @DoubleRange(min = 42, max = 70) double in, @ForAll @DoubleRange(min = 20, max = 40) double out) {
        for (var model : new String[] {"douglas-1988", "loeppky-1983"}) {
            assertThat(Computed.from(
                                    "blood-flow=2 L/min",
                                    "haemoglobin=10 g/dL",
                                    q("inlet-pco2", in, "mmHg"),
                                    q("outlet-pco2", out, "mmHg"),
                                    "inlet-ph=7.38 [pH]",
                                    "outlet-ph=7.38 [pH]",
                                    "inlet-saturation=70 %",
                                    "outlet-saturation=70 %")
                            .under("side", "blood-side")
                            .under("carbon-dioxide-model", model)
                            .value("carbon-dioxide-transfer"))
                    .isPositive();
        }
    }

    @Property(tries = 200)
    @Label("gas metered warmer, lower or wetter is less gas at STPD, in whatever unit PB is read")
    void standardState(
            @ForAll @DoubleRange(min = 20, max = 39) double t, @ForAll @DoubleRange(min = 600, max = 790) double pb) {
        double dry = exhaust("exhaust-gas-flow", q("gas-temperature", t, "°C"), q("barometric-pressure", pb, "mmHg"));

        assertThat(exhaust("exhaust-gas-flow", q("gas-temperature", t + 1, "°C"), q("barometric-pressure", pb, "mmHg")))
                .isLessThan(dry);
        assertThat(exhaust("exhaust-gas-flow", q("gas-temperature", t, "°C"), q("barometric-pressure", pb - 5, "mmHg")))
                .isLessThan(dry);
        assertThat(exhaust(
                        "exhaust-gas-flow-saturated",
                        q("gas-temperature", t, "°C"),
                        q("barometric-pressure", pb, "mmHg")))
                .isLessThan(dry);
        assertThat(exhaust(
                        "exhaust-gas-flow",
                        q("gas-temperature", t + 273.15, "K"),
                        q("barometric-pressure", pb * 1.33322, "hPa")))
                .isCloseTo(dry, within(1e-8));
    }

    private static double exhaust(String flow, String... more) {
        var computed = Computed.from(flow + "=1 L/min");
        for (var q : more) {
            computed.with(q);
        }
        return computed.value("exhaust-gas-flow-stpd");
    }

    @Property(tries = 200)
    @Label("water vapour presses more when warmer, and nothing is said outside of the table")
    void vapour(@ForAll @DoubleRange(min = 20, max = 39.5) double t) {
        assertThat(SaturatedVapour.at(t + 0.5)).isGreaterThan(SaturatedVapour.at(t));
        assertThat(SaturatedVapour.at(t - 20.5)).isNaN();
        assertThat(SaturatedVapour.at(t + 20.5)).isNaN();
    }

    @Property(tries = 200)
    @Label("temperature correction does nothing at 37 °C, and cold blood has less pressure and more pH")
    void temperatureCorrection(
            @ForAll @DoubleRange(min = 29, max = 36.5) double t, @ForAll @DoubleRange(min = 20, max = 400) double p) {
        for (var gas : new String[] {"po2", "pco2"}) {
            var id = "outlet-" + gas;
            for (var rule : Computed.metric(id + "-at-blood-temperature")
                    .aspect(gas + "-temperature-rule")
                    .orElseThrow()
                    .words()) {
                var warm = Computed.from(q(id, p, "mmHg"), "temperature=37 °C").under(gas + "-temperature-rule", rule);
                var cold = Computed.from(q(id, p, "mmHg"), q("temperature", t, "°C"))
                        .under(gas + "-temperature-rule", rule);
                assertThat(warm.value(id + "-at-blood-temperature")).isCloseTo(p, within(TINY));
                assertThat(cold.value(id + "-at-blood-temperature")).isLessThan(p);
            }
        }
        assertThat(Computed.from("outlet-ph=7.4 [pH]", q("temperature", t, "°C"))
                        .value("outlet-ph-at-blood-temperature"))
                .isGreaterThan(7.4);
    }

    @Property(tries = 200)
    @Label("heating and cooling by the same steps give one performance factor, in °C, K or °F")
    void performanceFactor(
            @ForAll @DoubleRange(min = 15, max = 30) double blood,
            @ForAll @DoubleRange(min = 3, max = 12) double difference,
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double share) {
        double warming = factor(blood, blood + share * difference, blood + difference, "°C", 1, 0);
        double cooling = factor(blood, blood - share * difference, blood - difference, "°C", 1, 0);

        assertThat(warming).isCloseTo(share, within(1e-8));
        assertThat(cooling).isCloseTo(share, within(1e-8));
        assertThat(factor(blood, blood + share * difference, blood + difference, "K", 1, 273.15))
                .isCloseTo(share, within(1e-8));
        assertThat(factor(blood, blood + share * difference, blood + difference, "°F", 1.8, 32))
                .isCloseTo(share, within(1e-8));
    }

    private static double factor(double in, double out, double water, String unit, double step, double zero) {
        return Computed.from(
                        q("inlet-blood-temperature", step * in + zero, unit),
                        q("outlet-blood-temperature", step * out + zero, unit),
                        q("inlet-water-temperature", step * water + zero, unit))
                .value("performance-factor");
    }
}
