package comparand.check;

/**
 * What it checks: a tolerance of a dossier without a reason.
 *
 * <p>Why it matters: a tolerance decides what counts as like; one without a reason looks like tuning.
 *
 * <p>What to write instead: {@code reason:} beside it.
 */
final class ToleranceWithoutReason implements Rule {

    @Override
    public String code() {
        return "tolerance-without-reason";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.dossiers().stream()
                .flatMap(d -> d.tolerances().stream())
                .filter(t -> t.reason().isEmpty())
                .forEach(t -> findings.stop(
                        t.within().span(),
                        "the tolerance on `%s` has no reason"
                                .formatted(t.condition().value()),
                        "a tolerance decides what counts as like; without a reason it looks like tuning",
                        "add `reason:`, or take the entry out to use the catalogue's tolerance"));
    }
}
