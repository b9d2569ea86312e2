package comparand.check;

import comparand.metric.Metric;
import comparand.unit.Printed;
import comparand.unit.PrintedNumber;
import comparand.unit.Unit;
import java.math.BigDecimal;
import java.util.List;

/**
 * What it checks: a value outside of what its metric can be.
 *
 * <p>Why it matters: it is a slip of a digit or a unit, and would move every comparison it enters.
 *
 * <p>What to write instead: the value as printed; the message names a unit in which it would be possible.
 */
final class ValueImpossible implements Rule {

    @Override
    public String code() {
        return "value-impossible";
    }

    private static final List<String> USUAL = List.of(
            "mmHg",
            "kPa",
            "cmH2O",
            "mL/min",
            "L/min",
            "mL",
            "L",
            "g/dL",
            "g/L",
            "mg/dL",
            "mg/L",
            "%",
            "mg/100 L",
            "g/100 L");

    @Override
    public void check(Context library, Findings findings) {
        library.eachValue((value, metric) -> Context.amounts(value.value(), metric)
                .filter(a -> !metric.possible().contain(a.inMetricUnit()))
                .forEach(a -> findings.hold(
                        value,
                        a.span(),
                        "`%s` of %s lies outside of what is possible, %s to %s"
                                .formatted(
                                        a.text(),
                                        metric.name(),
                                        plain(metric.possible().low()),
                                        new Printed(
                                                PrintedNumber.of(
                                                        plain(metric.possible().high())),
                                                metric.unit())),
                        "a slip of a digit or unit moves every comparison it enters",
                        "check the source"
                                + a.printed().map(p -> hint(p, metric)).orElse(""))));
    }

    private static String hint(Printed printed, Metric metric) {
        return USUAL.stream()
                .map(Unit::of)
                .filter(u -> u.convertsTo(metric.unit()) && !u.equals(printed.unit()))
                .filter(u -> metric.plausible().contain(new Printed(printed.number(), u).in(metric.unit())))
                .findFirst()
                .map(u -> "; %s %s would be possible".formatted(printed.number(), u))
                .orElse("");
    }

    private static String plain(double bound) {
        return BigDecimal.valueOf(bound).stripTrailingZeros().toPlainString();
    }
}
