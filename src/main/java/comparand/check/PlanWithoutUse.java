package comparand.check;

import comparand.metric.Nature;

/**
 * What it checks: a plan for a metric that is stated by design or counted as events.
 *
 * <p>Why it matters: the numbers are those of a difference of two means, and the plan would have no effect.
 *
 * <p>What to write instead: nothing; or what is not known, under {@code unknowns:} of the dossier.
 */
final class PlanWithoutUse implements Rule {

    @Override
    public String code() {
        return "plan-without-use";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.eachQuestion((question, metric) -> question.plan()
                .filter(plan -> metric.nature() != Nature.MEASURED)
                .ifPresent(plan -> findings.stop(
                        question.metric().span(),
                        "%s is %s, and its plan has no effect"
                                .formatted(
                                        metric.name(),
                                        metric.nature() == Nature.STATED ? "stated by design" : "counted as events"),
                        "numbers are planned for a difference of two means",
                        "take `plan:` out; what is not known can stand under `unknowns:`")));
    }
}
