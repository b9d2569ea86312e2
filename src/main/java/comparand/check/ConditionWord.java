package comparand.check;

import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.model.library.ConditionText;
import comparand.model.library.Entries;

/**
 * What it checks: a condition in words that is not one of the words it can be.
 *
 * <p>Why it matters: "cow" and "bovine" would never match.
 *
 * <p>What to write instead: one of the words {@code comparand catalogue} lists for it.
 */
final class ConditionWord implements Rule {

    @Override
    public String code() {
        return "condition-word";
    }

    @Override
    public void check(Context context, Findings findings) {
        var library = context.library();
        library.sources().values().forEach(s -> words(s.conditions(), context, findings));
        library.values().forEach(v -> words(v.value().conditions(), context, findings));
        library.studies().values().forEach(s -> {
            words(s.conditions(), context, findings);
            s.files().forEach(f -> words(f.conditions(), context, findings));
        });
    }

    private static void words(Entries<Located<ConditionText>> conditions, Context context, Findings findings) {
        for (var entry : conditions.list()) {
            context.catalogue()
                    .condition(entry.key().value())
                    .filter(c -> !c.words().isEmpty())
                    .ifPresent(condition -> {
                        var text = entry.value().value();
                        if (text.isReported() && !condition.words().contains(text.text())) {
                            findings.stop(
                                    entry.value().span(),
                                    "`%s` is not a word for `%s`".formatted(text.text(), condition.id()),
                                    "two words for one thing would never match",
                                    Suggest.instruction(text.text(), condition.words()));
                        }
                    });
        }
    }
}
