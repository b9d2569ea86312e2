package comparand.check;

import comparand.diag.Located;
import comparand.metric.Metric;
import comparand.model.library.OneOrMore;
import comparand.unit.Printed;

/**
 * What it checks: a difference to be found, or a standard deviation to plan by, that is in a unit which does not measure its
 * metric, or is not positive.
 *
 * <p>Why it matters: the number of units or cases would be worked out from another quantity.
 *
 * <p>What to write instead: a positive amount in the unit of the metric.
 */
final class PlanUnit implements Rule {

    @Override
    public String code() {
        return "plan-unit";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.eachQuestion((question, metric) -> question.plan().ifPresent(plan -> {
            plan.detect().map(OneOrMore::list).ifPresent(all -> all.forEach(d -> amount(d, metric, findings)));
            plan.sd().ifPresent(sd -> amount(sd, metric, findings));
        }));
    }

    private static void amount(Located<Printed> amount, Metric metric, Findings findings) {
        if (!MarginUnit.measures(amount.value(), metric)) {
            findings.stop(
                    amount.span(),
                    "`%s` does not measure a difference in %s".formatted(amount.value(), metric.name()),
                    "the numbers planned would rest on another quantity",
                    "write it in %s".formatted(MarginUnit.unitOf(metric)));
        } else if (amount.value().number().value().signum() <= 0) {
            findings.stop(
                    amount.span(),
                    "a difference to be found and a standard deviation are more than zero, got `%s`"
                            .formatted(amount.value()),
                    "no number of results finds a difference of nothing",
                    "write an amount above zero, or take it out");
        }
    }
}
