package comparand.check;

import comparand.model.library.SourceKind;

/**
 * What it checks: instructions for use without revision and date.
 *
 * <p>Why it matters: they change, and devices were built to one of them.
 *
 * <p>What to write instead: {@code document: {revision: C, date: 2024-03}}.
 */
final class RevisionMissing implements Rule {

    @Override
    public String code() {
        return "revision-missing";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.library().sources().values().stream()
                .filter(s -> s.kind().value() == SourceKind.INSTRUCTIONS_FOR_USE
                        && s.document().isEmpty())
                .forEach(s -> findings.stop(
                        s.kind().span(),
                        "the instructions for use `%s` have no revision".formatted(s.id()),
                        "they change from revision to revision, and so do the figures in them",
                        "add `document: {revision: C, date: 2024-03}` from the foot of the document"));
    }
}
