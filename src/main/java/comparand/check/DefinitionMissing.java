package comparand.check;

import comparand.metric.Aspect;
import comparand.metric.Role;

/**
 * What it checks: a value that does not say which variant of its metric it is, where that decides.
 *
 * <p>Why it matters: 15 mL of filter is a third of a small prime: the same name may stand for different quantities.
 *
 * <p>What to write instead: the variant under {@code definition:}, or {@code not reported}.
 */
final class DefinitionMissing implements Rule {

    @Override
    public String code() {
        return "definition-missing";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.eachValue((value, metric) -> metric.definition().stream()
                .filter(a -> a.role() != Role.QUALIFIES
                        && !value.value().definition().has(a.id())
                        && value.value().claim().isEmpty())
                .forEach(a -> findings.hold(
                        value,
                        value.value().metric().span(),
                        "`%s` does not say which %s it follows: %s".formatted(value.id(), metric.name(), a.name()),
                        "under one name, sources print different quantities",
                        "add `definition: {%s: %s}`, or `not reported`"
                                .formatted(
                                        a.id(),
                                        a instanceof Aspect.Parts
                                                ? a.words()
                                                        .subList(
                                                                0,
                                                                Math.min(
                                                                        2,
                                                                        a.words()
                                                                                .size()))
                                                : String.join(" | ", a.words())))));
    }
}
