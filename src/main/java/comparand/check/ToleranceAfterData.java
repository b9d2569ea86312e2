package comparand.check;

/**
 * What it checks: a tolerance set after the first results were seen.
 *
 * <p>Why it matters: it may have been chosen for its effect.
 *
 * <p>What to write instead: nothing: it is printed with the tolerances.
 */
final class ToleranceAfterData implements Rule {

    @Override
    public String code() {
        return "tolerance-after-data";
    }

    @Override
    public void check(Context library, Findings findings) {
        for (var dossier : library.dossiers()) {
            dossier.firstSeen()
                    .ifPresent(seen -> dossier.tolerances().stream()
                            .filter(t -> t.set().value().isAfter(seen.value()))
                            .forEach(t -> findings.note(
                                    t.set().span(),
                                    "the tolerance on `%s` was set on %s, after the first results were seen on %s"
                                            .formatted(
                                                    t.condition().value(),
                                                    t.set().value(),
                                                    seen.value()),
                                    "a tolerance chosen with the results in sight may have been chosen for its effect",
                                    "nothing to mend; it is printed with the tolerances")));
        }
    }
}
