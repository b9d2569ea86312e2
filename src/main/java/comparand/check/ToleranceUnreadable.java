package comparand.check;

import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.metric.Tolerance;
import comparand.model.library.ToleranceRecord;
import comparand.unit.DecimalSign;

/**
 * What it checks: a tolerance on an unknown condition or metric, on a condition the metric does not depend on, or
 * one that cannot be read.
 *
 * <p>Why it matters: it would have no effect, and the report would follow another.
 *
 * <p>What to write instead: {@code equal}, {@code 1 g/dL}, or {@code 5 % of the value}, on a condition of the metric.
 */
final class ToleranceUnreadable implements Rule {

    @Override
    public String code() {
        return "tolerance-unreadable";
    }

    @Override
    public void check(Context context, Findings findings) {
        for (var dossier : context.dossiers()) {
            var sign = dossier.decimal().map(Located::value).orElse(DecimalSign.POINT);
            for (var tolerance : dossier.allTolerances()) {
                tolerance.metric().ifPresent(m -> metric(m, tolerance, context, findings));
                var condition =
                        context.catalogue().condition(tolerance.condition().value());
                if (condition.isEmpty()) {
                    findings.stop(
                            tolerance.condition().span(),
                            "`%s` is not a condition known here"
                                    .formatted(tolerance.condition().value()),
                            "the tolerance would have no effect",
                            Suggest.instruction(
                                    tolerance.condition().value(),
                                    context.catalogue().conditions().keySet()));
                } else {
                    Tolerance.read(tolerance.within().value(), sign, condition.get())
                            .fold(ok -> true, fault -> {
                                findings.stop(
                                        tolerance.within().span().part(fault.at(), fault.length()),
                                        fault.problem(),
                                        "the report would follow another tolerance than meant",
                                        fault.fix());
                                return false;
                            });
                }
            }
        }
    }

    private static void metric(Located<String> id, ToleranceRecord tolerance, Context context, Findings findings) {
        var metric = context.catalogue().find(id.value());
        if (metric.isEmpty()) {
            findings.stop(
                    id.span(),
                    "`%s` is not a metric known here".formatted(id.value()),
                    "the tolerance would have no effect",
                    Suggest.instruction(id.value(), context.catalogue().ids()));
        } else if (context.catalogue().condition(tolerance.condition().value()).isPresent()
                && metric.get().condition(tolerance.condition().value()).isEmpty()) {
            findings.stop(
                    tolerance.condition().span(),
                    "%s does not depend on `%s`"
                            .formatted(
                                    metric.get().name(), tolerance.condition().value()),
                    "the tolerance would have no effect",
                    Suggest.instruction(
                            tolerance.condition().value(),
                            metric.get().conditions().stream()
                                    .map(u -> u.condition().id())
                                    .toList()));
        }
    }
}
