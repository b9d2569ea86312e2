package comparand.check;

/**
 * What it checks: a dossier whose question and margins were fixed after the first results were seen.
 *
 * <p>Why it matters: margins chosen with the results in sight prove little.
 *
 * <p>What to write instead: nothing: it is printed with the answers.
 */
final class MarginAfterData implements Rule {

    @Override
    public String code() {
        return "margin-after-data";
    }

    @Override
    public void check(Context library, Findings findings) {
        for (var dossier : library.dossiers()) {
            dossier.firstSeen()
                    .filter(seen -> seen.value().isBefore(dossier.fixed().value()))
                    .ifPresent(seen -> findings.note(
                            dossier.fixed().span(),
                            "question and margins were fixed on %s, after the first results were seen on %s"
                                    .formatted(dossier.fixed().value(), seen.value()),
                            "margins chosen with the results in sight carry less weight",
                            "nothing to mend; it is printed with the answers"));
        }
    }
}
