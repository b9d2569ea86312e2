package comparand.check;

import comparand.metric.Metric;
import comparand.unit.Printed;

/**
 * What it checks: a margin in a unit that does not measure its metric, or one that is not positive.
 *
 * <p>Why it matters: a difference could not be set against it.
 *
 * <p>What to write instead: a positive difference in the unit of the metric.
 */
final class MarginUnit implements Rule {

    @Override
    public String code() {
        return "margin-unit";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.eachQuestion((question, metric) -> question.margin()
                .ifPresent(margin -> margin.value().amount().ifPresent(amount -> {
                    if (!measures(amount, metric)) {
                        findings.stop(
                                margin.span(),
                                "`%s` does not measure a difference in %s".formatted(amount, metric.name()),
                                "a difference could not be set against it",
                                "write it in %s".formatted(unitOf(metric)));
                    } else if (amount.number().value().signum() <= 0) {
                        findings.stop(
                                margin.span(),
                                "a margin is more than zero, got `%s`".formatted(amount),
                                "a margin of nothing would call every difference large",
                                "write the smallest difference that would change the decision, or `none`");
                    }
                })));
    }

    /** Whether an amount is a difference in a metric: in a unit of its quantity, and not a bare number unless the metric is. */
    static boolean measures(Printed amount, Metric metric) {
        boolean bare = amount.unit().isNumber() && !metric.unit().isNumber();
        return !bare && amount.unit().convertsTo(metric.unit());
    }

    static String unitOf(Metric metric) {
        return metric.differenceUnit().isEmpty() ? "plain numbers" : metric.differenceUnit();
    }
}
