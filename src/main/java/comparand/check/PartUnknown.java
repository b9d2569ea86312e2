package comparand.check;

import comparand.diag.Suggest;
import comparand.metric.Aspect;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What it checks: a part of a device that no metric's definition speaks of.
 *
 * <p>Why it matters: what a misspelt part adds would be missing from every sum over parts.
 *
 * <p>What to write instead: the part as {@code comparand catalogue METRIC} names it.
 */
final class PartUnknown implements Rule {

    @Override
    public String code() {
        return "part-unknown";
    }

    @Override
    public void check(Context context, Findings findings) {
        var known = new TreeSet<String>();
        context.catalogue().all().stream()
                .flatMap(m -> m.definition().stream())
                .filter(Aspect.Parts.class::isInstance)
                .map(Aspect::words)
                .forEach(known::addAll);
        context.library().devices().values().stream()
                .flatMap(d -> d.parts().stream())
                .map(p -> p.part())
                .filter(part -> !known.contains(part.value()))
                .forEach(part -> {
                    var message = "no metric's definition speaks of a part `%s`".formatted(part.value());
                    var why = "what it adds would be missing from every sum over parts";
                    var meant = meant(part.value(), known);
                    if (meant.isPresent()) {
                        findings.stop(part.span(), message, why, "did you mean `%s`?".formatted(meant.get()));
                    } else {
                        findings.note(part.span(), message, why, "nothing to mend if it plays no part in any value");
                    }
                });
    }

    /** A word nearly the same, or one that the name contains: an exchanger is called heat-exchanger in print. */
    private static Optional<String> meant(String part, Set<String> known) {
        return Suggest.nearest(part, known)
                .or(() -> known.stream().filter(part::contains).findFirst());
    }
}
