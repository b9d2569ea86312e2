package comparand.check;

import comparand.model.library.YesNo;

/**
 * What it checks: a value completed by a letter that may not be cited.
 *
 * <p>Why it matters: a report that uses it cites it.
 *
 * <p>What to write instead: {@code may-be-cited: yes} once who wrote it agrees; until then the print alone.
 */
final class LetterNotCited implements Rule {

    @Override
    public String code() {
        return "letter-not-cited";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.values()
                .forEach(v -> v.value()
                        .letter()
                        .filter(l -> l.mayBeCited().value() == YesNo.NO)
                        .ifPresent(l -> findings.hold(
                                v,
                                l.mayBeCited().span(),
                                "the value `%s` rests on a letter of %s that may not be cited"
                                        .formatted(v.id(), l.by().value()),
                                "a report that uses it cites it",
                                "ask for leave and write `may-be-cited: yes`; or record what is printed alone")));
    }
}
