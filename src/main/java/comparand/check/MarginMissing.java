package comparand.check;

/**
 * What it checks: a question of a dossier without a margin.
 *
 * <p>Why it matters: only a margin set beforehand can say whether a difference matters.
 *
 * <p>What to write instead: {@code margin: 10 mmHg}, or {@code margin: none} to print intervals only.
 */
final class MarginMissing implements Rule {

    @Override
    public String code() {
        return "margin-missing";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.dossiers().stream()
                .flatMap(d -> d.questions().stream())
                .filter(q -> q.margin().isEmpty())
                .forEach(
                        q -> findings.stop(
                                q.metric().span(),
                                "the question on `%s` has no margin"
                                        .formatted(q.metric().value()),
                                "only a margin set beforehand can say whether a difference matters",
                                "add `margin:` with the smallest difference that would change the decision, or `margin: none` to print intervals only"));
    }
}
