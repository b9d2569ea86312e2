package comparand.check;

import comparand.diag.Suggest;
import comparand.metric.Condition;
import comparand.metric.Metric;
import comparand.model.library.ColumnQuantities;
import comparand.model.library.StepsRecord;
import java.util.TreeSet;

/**
 * What it checks: a study file grouped by something that no column gives, or a question that asks for steps of a
 * condition its metric does not have, or in a unit that does not measure it.
 *
 * <p>Why it matters: groups could not be told apart, or nothing would be compared.
 *
 * <p>What to write instead: a condition that a column of the file gives.
 */
final class StepUnknown implements Rule {

    @Override
    public String code() {
        return "step-unknown";
    }

    @Override
    public void check(Context context, Findings findings) {
        for (var study : context.library().studies().values()) {
            for (var file : study.files()) {
                var given = new TreeSet<>(ColumnQuantities.of(file).keySet());
                // a column with an unknown name may be the one that is meant; it is found when the file is read
                boolean known = given.stream()
                        .allMatch(q -> context.catalogue().condition(q).isPresent()
                                || context.catalogue().input(q).isPresent()
                                || context.catalogue().find(q).isPresent());
                file.groupedBy().stream()
                        .filter(g -> known && !given.contains(g.value()))
                        .forEach(g -> findings.stop(
                                g.span(),
                                "no column of `%s` gives `%s`"
                                        .formatted(file.file().value(), g.value()),
                                "the steps of the study could not be told apart",
                                Suggest.instruction(g.value(), given)));
            }
        }
        context.eachQuestion((question, metric) -> question.at()
                .ifPresent(at -> metric.condition(at.condition().value())
                        .ifPresentOrElse(
                                use -> steps(at, use.condition(), findings),
                                () -> findings.stop(
                                        at.condition().span(),
                                        "%s does not depend on `%s`"
                                                .formatted(
                                                        metric.name(),
                                                        at.condition().value()),
                                        "nothing would be compared at these steps",
                                        instead(at.condition().value(), metric)))));
    }

    private static String instead(String condition, Metric metric) {
        var known = metric.conditions().stream().map(u -> u.condition().id()).toList();
        return known.isEmpty() ? "take `at:` out" : Suggest.instruction(condition, known);
    }

    private static void steps(StepsRecord at, Condition condition, Findings findings) {
        if (condition.unit().isEmpty()) {
            findings.stop(
                    at.condition().span(),
                    "`%s` is named in words and has no steps".formatted(condition.id()),
                    "nothing would be compared at these steps",
                    "choose a condition that is a number, or take `at:` out");
            return;
        }
        var unit = condition.unit().get();
        for (var step : at.steps().list()) {
            var fit = UnitFit.of(step.value().unit(), unit);
            if (fit != UnitFit.FITS) {
                findings.stop(
                        step.span(),
                        fit.problem(step.value(), condition.name()),
                        "nothing would be compared at this step",
                        fit.fix(step.value().number(), unit));
            }
        }
    }
}
