package comparand.check;

/**
 * What it checks: weights set after the first results were seen.
 *
 * <p>Why it matters: they may have been chosen for the order they lead to.
 *
 * <p>What to write instead: nothing: it is printed with the limitations.
 */
final class WeightsAfterData implements Rule {

    @Override
    public String code() {
        return "weights-after-data";
    }

    @Override
    public void check(Context context, Findings findings) {
        for (var dossier : context.dossiers()) {
            dossier.firstSeen()
                    .ifPresent(seen -> dossier.weights()
                            .filter(w -> w.on().value().isAfter(seen.value()))
                            .ifPresent(w -> findings.note(
                                    w.on().span(),
                                    "the weights were set on %s, after the first results were seen on %s"
                                            .formatted(w.on().value(), seen.value()),
                                    "weights chosen with the results in sight may have been chosen for their order",
                                    "nothing to mend; it is printed with the limitations")));
        }
    }
}
