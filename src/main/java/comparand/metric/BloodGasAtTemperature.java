package comparand.metric;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import java.util.function.Function;

/**
 * Blood gases of a sample at the temperature of the blood, from those an analyser gives at 37 °C. For comparison with
 * prints that were corrected; contents are computed of the values at 37 °C, never of these.
 */
final class BloodGasAtTemperature {

    private static final Citation ANALYSER =
            Citation.read("Manuals of blood gas analysers", "temperature correction, as on open pages");
    private static final Citation BRADLEY = Citation.read(
            "Bradley, Severinghaus and Stupfel, J Appl Physiol 1956;9:201-204", "abstract: 0.0185 per °C");
    private static final Citation MEMORY = Citation.fromMemory("Manuals of blood gas analysers", "PCO₂, 0.019 per °C");

    private BloodGasAtTemperature() {}

    /** A rule of correction: {@code to} gives the value at t °C of one at 37 °C. */
    private record Rule(String id, String meaning, String formula, Citation source, DoubleBinaryOperator to) {}

    /** Temperatures of the printed table, in °C; at 37 nothing is corrected. */
    private static final double[] TABLE_AT = {29, 30, 32, 34, 36, 37, 38, 40};

    private static final List<Rule> PH = List.of(
            new Rule(
                    "analyser",
                    "-0.0147 + 0.0065 · (7.40 - pH) per °C",
                    "%s + (-0.0147 + 0.0065 · (7.40 - %s)) · (T - 37)",
                    ANALYSER,
                    (ph, t) -> ph + (-0.0147 + 0.0065 * (7.40 - ph)) * (t - 37)),
            new Rule(
                    "fixed",
                    "-0.015 per °C, as in printed tables",
                    "%s - 0.015 · (T - 37)",
                    Citation.read("clpmag.com, table of correction factors", "+0.105 at 30 °C"),
                    (ph, t) -> ph - 0.015 * (t - 37)));
    private static final List<Rule> PCO2 = List.of(
            power("0.019", MEMORY),
            power("0.021", Citation.commonPractice("in some analysers")),
            power("0.0185", BRADLEY),
            table(0.720, 0.750, 0.815, 0.885, 0.960, 1, 1.040, 1.125));
    private static final List<Rule> PO2 = List.of(
            new Rule(
                    "analyser",
                    "exponent falls with pressure, as analysers compute it",
                    "%1$s · 10^((5.49e-11 · %1$s^3.88 + 0.071) / (9.72e-9 · %1$s^3.88 + 2.30) · (T - 37))",
                    ANALYSER,
                    (p, t) -> {
                        double x = Math.pow(p, 3.88);
                        return p * Math.pow(10, (5.49e-11 * x + 0.071) / (9.72e-9 * x + 2.30) * (t - 37));
                    }),
            new Rule(
                    "severinghaus",
                    "equation 3 of Severinghaus 1979 in one step",
                    "%1$s · exp((0.058 / (0.243 · (%1$s / 100)^3.88 + 1) + 0.013) · (T - 37))",
                    Sources.SEVERINGHAUS,
                    (p, t) -> p * Math.exp(OxygenDissociation.temperatureCoefficient(p) * (t - 37))),
            power("0.031", Citation.commonPractice("0.031 per °C whatever the pressure")),
            table(0.560, 0.600, 0.700, 0.805, 0.930, 1, 1.070, 1.225));

    private static Rule table(double... factors) {
        return new Rule(
                "printed-table",
                "factors of a printed table, 29 to 40 °C, straight lines between",
                "%s · factor at T, from the table",
                Citation.read("clpmag.com, citing a maker's booklet of 2012", "table of correction factors"),
                (p, t) -> p * factor(factors, t));
    }

    private static double factor(double[] factors, double celsius) {
        for (int i = 1; i < factors.length; i++) {
            double from = TABLE_AT[i - 1];
            double to = TABLE_AT[i];
            if (from <= celsius && celsius <= to) {
                return factors[i - 1] + (factors[i] - factors[i - 1]) * (celsius - from) / (to - from);
            }
        }
        return Double.NaN;
    }

    private static Rule power(String exponent, Citation source) {
        return new Rule(
                exponent,
                "10 to the power of " + exponent + " per °C",
                "%s · 10^(" + exponent + " · (T - 37))",
                source,
                (p, t) -> p * Math.pow(10, Double.parseDouble(exponent) * (t - 37)));
    }

    static Metric ph(boolean inlet) {
        return card(inlet, "ph", Side::ph, "pH", "pH", PH)
                .unit("[pH]")
                .plausible(6.9, 7.8)
                .possible(6.5, 8.0)
                .worked(worked("7.5029 [pH]", "7.40 + 0.0147 × 7", side(inlet).ph(), "7.40 [pH]"))
                .worked(worked("7.505 [pH]", "7.40 + 0.105", side(inlet).ph(), "7.40 [pH]")
                        .under(aspect("ph"), "fixed"))
                .build();
    }

    static Metric pco2(boolean inlet) {
        return card(inlet, "pco2", Side::pco2, "carbon dioxide pressure", "PCO₂", PCO2)
                .unit("mmHg")
                .plausible(10, 100)
                .possible(3, 200)
                .worked(worked("29.448 mmHg", "40 × 10^-0.133", side(inlet).pco2(), "40 mmHg"))
                .worked(worked("28.514 mmHg", "40 × 10^-0.147", side(inlet).pco2(), "40 mmHg")
                        .under(aspect("pco2"), "0.021"))
                .worked(worked("29.687 mmHg", "40 × 10^-0.1295", side(inlet).pco2(), "40 mmHg")
                        .under(aspect("pco2"), "0.0185"))
                .worked(worked("30.0 mmHg", "40 × 0.750", side(inlet).pco2(), "40 mmHg")
                        .under(aspect("pco2"), "printed-table"))
                .build();
    }

    static Metric po2(boolean inlet) {
        return card(inlet, "po2", Side::po2, "oxygen pressure", "PO₂", PO2)
                .unit("mmHg")
                .plausible(15, 650)
                .possible(3, 760)
                .worked(worked("65.834 mmHg", "100 at 30 °C", side(inlet).po2(), "100 mmHg"))
                .worked(worked(
                                "65.861 mmHg",
                                "100 × exp(-0.059661 × 7)",
                                side(inlet).po2(),
                                "100 mmHg")
                        .under(aspect("po2"), "severinghaus"))
                .worked(worked("60.67 mmHg", "100 × 10^-0.217", side(inlet).po2(), "100 mmHg")
                        .under(aspect("po2"), "0.031"))
                .worked(worked("60.0 mmHg", "100 × 0.600", side(inlet).po2(), "100 mmHg")
                        .under(aspect("po2"), "printed-table"))
                .build();
    }

    /** Each gas has rules of its own. */
    private static String aspect(String gas) {
        return gas + "-temperature-rule";
    }

    private static Side side(boolean inlet) {
        return inlet ? Side.INLET : Side.OUTLET;
    }

    private static Metric.Builder card(
            boolean inlet, String gas, Function<Side, Input> letter, String name, String symbol, List<Rule> rules) {
        var input = letter.apply(side(inlet));
        var card = Metric.named(
                        input.id() + "-at-blood-temperature",
                        "%s at the %s, at blood temperature"
                                .formatted(name, side(inlet).word()))
                .symbol(symbol + " T")
                .meaning("The %s of the blood at the %s at its own temperature, computed of the value at 37 °C"
                        .formatted(name, side(inlet).word()));
        for (var rule : rules) {
            card.derived(Derivation.of(
                            rule.formula.formatted(input.symbol(), input.symbol()),
                            rule.source,
                            in -> rule.to.applyAsDouble(in.of(input), in.of(Letters.TEMPERATURE)),
                            input,
                            Letters.TEMPERATURE)
                    .giving(aspect(gas), rule.id));
        }
        return card.aspect(new Aspect.Choice(
                        aspect(gas),
                        "rule of the temperature correction",
                        "correction",
                        Role.DECIDES,
                        rules.get(0).id,
                        rules.stream().map(r -> new Variant(r.id, r.meaning)).toList(),
                        List.of()))
                .decides(Conditions.TEMPERATURE, Flowing.TEMPERATURE, Influence.instead(Map.of(), ""))
                .confusedWith(input.id())
                .cites(rules.get(0).source);
    }

    private static WorkedValue worked(String result, String how, Input input, String value) {
        return WorkedValue.of(result, Citation.derived(how), input.id() + "=" + value, "temperature=30 °C");
    }
}
