package comparand.check;

import comparand.diag.Suggest;
import comparand.unit.Unit;

/**
 * What it checks: a limit of a label on something that is no condition, or in a unit that does not measure it;
 * what a part adds in a unit that does not fit its metric.
 *
 * <p>Why it matters: use outside the label could not be found, and parts could not be added.
 *
 * <p>What to write instead: a condition and a unit the catalogue knows, such as {@code limits: blood-flow} and {@code
 * range: 0.1 to 1.5 L/min}.
 */
final class LabelUnit implements Rule {

    @Override
    public String code() {
        return "label-unit";
    }

    @Override
    public void check(Context context, Findings findings) {
        for (var device : context.library().devices().values()) {
            for (var limit : device.label()) {
                var condition = context.catalogue().condition(limit.limits().value());
                if (condition.isEmpty()) {
                    findings.stop(
                            limit.limits().span(),
                            "`%s` is not a condition known here"
                                    .formatted(limit.limits().value()),
                            "use outside the label could not be found",
                            Suggest.instruction(
                                    limit.limits().value(),
                                    context.catalogue().conditions().keySet()));
                } else if (!condition
                        .get()
                        .unit()
                        .map(u -> limit.range().value().low().unit().convertsTo(u))
                        .orElse(false)) {
                    findings.stop(
                            limit.range().span(),
                            "`%s` does not measure %s"
                                    .formatted(
                                            limit.range().value(),
                                            condition.get().name()),
                            "use outside the label could not be found",
                            "write the range in %s"
                                    .formatted(condition
                                            .get()
                                            .unit()
                                            .map(Unit::toString)
                                            .orElse("its own unit")));
                }
            }
            for (var part : device.parts()) {
                for (var added : part.adds().list()) {
                    var metric = context.catalogue().find(added.key().value());
                    if (metric.isEmpty()) {
                        findings.stop(
                                added.key().span(),
                                "`%s` is not a metric known here"
                                        .formatted(added.key().value()),
                                "what the part adds could not be added to anything",
                                Suggest.instruction(
                                        added.key().value(), context.catalogue().ids()));
                    } else if (!added.value()
                            .value()
                            .unit()
                            .convertsTo(metric.get().unit())) {
                        findings.stop(
                                added.value().span(),
                                "`%s` does not measure %s"
                                        .formatted(
                                                added.value().value(),
                                                metric.get().name()),
                                "what the part adds could not be added",
                                "write it in %s".formatted(metric.get().unit()));
                    }
                }
            }
        }
    }
}
