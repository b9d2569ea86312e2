package comparand.check;

import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.model.library.ConditionText;
import comparand.model.library.Entries;

/**
 * What it checks: a condition that no metric and no vocabulary knows.
 *
 * <p>Why it matters: nobody could say whether two values share it.
 *
 * <p>What to write instead: a condition that {@code comparand catalogue} lists, or one declared with a metric of the
 * library.
 */
final class ConditionUnknown implements Rule {

    @Override
    public String code() {
        return "condition-unknown";
    }

    @Override
    public void check(Context context, Findings findings) {
        var library = context.library();
        library.sources().values().forEach(s -> names(s.conditions(), context, findings));
        library.values().forEach(v -> names(v.value().conditions(), context, findings));
        library.studies().values().forEach(s -> {
            names(s.conditions(), context, findings);
            s.files().forEach(f -> names(f.conditions(), context, findings));
        });
    }

    private static void names(Entries<Located<ConditionText>> conditions, Context context, Findings findings) {
        var known = context.catalogue().conditions().keySet();
        conditions.stream()
                .map(Entries.Entry::key)
                .filter(k -> !known.contains(k.value())
                        && !context.catalogue().inputs().containsKey(k.value()))
                .forEach(k -> findings.stop(
                        k.span(),
                        "`%s` is not a condition known here".formatted(k.value()),
                        "nobody could say whether two values share it",
                        Suggest.instruction(k.value(), known)));
    }
}
