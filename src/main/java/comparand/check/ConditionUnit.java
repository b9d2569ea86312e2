package comparand.check;

import comparand.diag.Located;
import comparand.metric.Condition;
import comparand.metric.Input;
import comparand.model.library.ConditionText;
import comparand.model.library.Entries;
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
                var given = unitOf(text);
                if (given.isEmpty() && text.isReported()) {
                    findings.stop(
                            entry.value().span(),
                            "`%s` of `%s` is not a number"
                                    .formatted(text.text(), entry.key().value()),
                            "it is kept in %s and compared as a number".formatted(name(unit)),
                            "write a number with its unit, or `not reported`");
                } else if (given.isPresent() && !given.get().convertsTo(unit)) {
                    findings.stop(
                            entry.value().span(),
                            given.get().isNumber()
                                    ? "`%s` of `%s` has no unit"
                                            .formatted(text.text(), entry.key().value())
                                    : "`%s` of `%s` is in a unit that does not measure it"
                                            .formatted(text.text(), entry.key().value()),
                            "it is kept in %s and could not be set beside ours".formatted(name(unit)),
                            "write it with its unit as printed, such as `%s %s`".formatted(digits(text), unit));
                } else if (given.isPresent() && given.get().isNumber() && !unit.isNumber()) {
                    findings.stop(
                            entry.value().span(),
                            "`%s` of `%s` may be a fraction or per cent"
                                    .formatted(text.text(), entry.key().value()),
                            "0.65 and 65 % are the same, 0.65 % is not",
                            "write the per cent sign, or `1` as unit for a fraction");
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

    private static Optional<Unit> unitOf(ConditionText text) {
        return text.fold(new ConditionText.Cases<>() {
            @Override
            public Optional<Unit> amount(ConditionText.Amount a) {
                return Optional.of(a.value().unit());
            }

            @Override
            public Optional<Unit> between(ConditionText.Between b) {
                return Optional.of(b.range().low().unit());
            }

            @Override
            public Optional<Unit> word(ConditionText.Word w) {
                return Optional.empty();
            }

            @Override
            public Optional<Unit> notReported() {
                return Optional.empty();
            }
        });
    }

    private static String digits(ConditionText text) {
        return text.asNumber().map(p -> p.number().text()).orElse("12");
    }

    private static String name(Unit unit) {
        return unit.isNumber() ? "plain numbers" : unit.toString();
    }
}
