package comparand.check;

import comparand.diag.Located;
import comparand.metric.Condition;
import comparand.metric.Input;
import comparand.model.library.ConditionText;
import comparand.model.library.Entries;
import comparand.unit.Printed;
import comparand.unit.Unit;
import java.util.Optional;

/**
 * What it checks: a condition that is a number, written as words, without a unit or in a unit that does not
 * measure it.
 *
 * <p>Why it matters: it could not be set beside ours.
 *
 * <p>What to write instead: the number with its unit, as printed.
 */
final class ConditionUnit implements Rule {

    @Override
    public String code() {
        return "condition-unit";
    }

    @Override
    public void check(Context context, Findings findings) {
        var library = context.library();
        library.sources().values().forEach(s -> numbers(s.conditions(), context, findings));
        library.values().forEach(v -> numbers(v.value().conditions(), context, findings));
        library.studies().values().forEach(s -> {
            numbers(s.conditions(), context, findings);
            s.files().forEach(f -> numbers(f.conditions(), context, findings));
        });
    }

    private static void numbers(Entries<Located<ConditionText>> conditions, Context context, Findings findings) {
        for (var entry : conditions.list()) {
            unit(entry.key().value(), context).ifPresent(unit -> {
                var text = entry.value().value();
                var given = numberOf(text);
                if (given.isEmpty() && text.isReported()) {
                    findings.stop(
                            entry.value().span(),
                            "`%s` of `%s` is not a number"
                                    .formatted(text.text(), entry.key().value()),
                            "it is kept in %s and compared as a number".formatted(UnitFit.name(unit)),
                            "write a number with its unit, or `not reported`");
                } else if (given.isPresent()) {
                    var fit = UnitFit.of(given.get().unit(), unit);
                    if (fit != UnitFit.FITS) {
                        findings.stop(
                                entry.value().span(),
                                fit.problem(text.text(), "`" + entry.key().value() + "`"),
                                "it is kept in %s and could not be set beside ours".formatted(UnitFit.name(unit)),
                                fit.fix(given.get().number(), unit));
                    }
                }
            });
        }
    }

    private static Optional<Unit> unit(String id, Context context) {
        return context.catalogue()
                .condition(id)
                .flatMap(Condition::unit)
                .or(() -> Optional.ofNullable(context.catalogue().inputs().get(id))
                        .map(Input::unit)
                        .filter(u -> context.catalogue().condition(id).isEmpty()));
    }

    private static Optional<Printed> numberOf(ConditionText text) {
        return text.fold(new ConditionText.Cases<>() {
            @Override
            public Optional<Printed> amount(ConditionText.Amount a) {
                return Optional.of(a.value());
            }

            @Override
            public Optional<Printed> between(ConditionText.Between b) {
                return Optional.of(b.range().low());
            }

            @Override
            public Optional<Printed> word(ConditionText.Word w) {
                return Optional.empty();
            }

            @Override
            public Optional<Printed> notReported() {
                return Optional.empty();
            }
        });
    }
}
