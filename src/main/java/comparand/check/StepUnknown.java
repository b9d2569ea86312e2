package comparand.check;

import comparand.diag.Suggest;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What it checks: a study file grouped by something that no column gives, or a question that asks for steps of a
 * condition its metric does not have.
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
                var given = new TreeSet<String>();
                file.columns().stream()
                        .forEach(c -> Stream.of(c.value().input(), c.value().condition())
                                .flatMap(Optional::stream)
                                .forEach(q -> given.add(q.value())));
                file.groupedBy().stream()
                        .filter(g -> !given.contains(g.value()))
                        .forEach(g -> findings.stop(
                                g.span(),
                                "no column of `%s` gives `%s`"
                                        .formatted(file.file().value(), g.value()),
                                "the steps of the study could not be told apart",
                                Suggest.instruction(g.value(), given)));
            }
        }
        context.eachQuestion((question, metric) -> question.at()
                .filter(at -> metric.condition(at.condition().value()).isEmpty())
                .ifPresent(at -> findings.stop(
                        at.condition().span(),
                        "%s does not depend on `%s`"
                                .formatted(metric.name(), at.condition().value()),
                        "nothing would be compared at these steps",
                        Suggest.instruction(
                                at.condition().value(),
                                metric.conditions().stream()
                                        .map(u -> u.condition().id())
                                        .toList()))));
    }
}
