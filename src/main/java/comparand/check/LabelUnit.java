package comparand.check;

import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.model.library.Entries;
import comparand.model.library.LabelRecord;
import comparand.unit.Printed;

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

    private static final String UNSEEN = "use outside the label could not be found";

    @Override
    public void check(Context context, Findings findings) {
        for (var device : context.library().devices().values()) {
            device.label().forEach(limit -> limit(limit, context, findings));
            for (var part : device.parts()) {
                part.adds().list().forEach(added -> added(added, context, findings));
            }
        }
    }

    private static void limit(LabelRecord limit, Context context, Findings findings) {
        var id = limit.limits().value();
        var condition = context.catalogue().condition(id);
        if (condition.isEmpty()) {
            findings.stop(
                    limit.limits().span(),
                    "`%s` is not a condition known here".formatted(id),
                    UNSEEN,
                    Suggest.instruction(id, context.catalogue().conditions().keySet()));
            return;
        }
        var unit = condition.get().unit();
        if (unit.isEmpty()) {
            findings.stop(
                    limit.limits().span(),
                    "`%s` is named in words and has no range".formatted(id),
                    UNSEEN,
                    "limit a condition that is a number, or state it under `conditions:` of the instructions for use");
            return;
        }
        var low = limit.range().value().low();
        var fit = UnitFit.of(low.unit(), unit.get());
        if (fit != UnitFit.FITS) {
            findings.stop(
                    limit.range().span(),
                    fit.problem(limit.range().value(), condition.get().name()),
                    UNSEEN,
                    fit.fix(low.number(), unit.get()));
        }
    }

    private static void added(Entries.Entry<Located<Printed>> added, Context context, Findings findings) {
        var id = added.key().value();
        var metric = context.catalogue().find(id);
        if (metric.isEmpty()) {
            findings.stop(
                    added.key().span(),
                    "`%s` is not a metric known here".formatted(id),
                    "what the part adds could not be added to anything",
                    Suggest.instruction(id, context.catalogue().ids()));
            return;
        }
        var amount = added.value().value();
        var fit = UnitFit.of(amount.unit(), metric.get().unit());
        if (fit != UnitFit.FITS) {
            findings.stop(
                    added.value().span(),
                    fit.problem(amount, metric.get().name()),
                    "what the part adds could not be added",
                    fit.fix(amount.number(), metric.get().unit()));
        }
    }
}
