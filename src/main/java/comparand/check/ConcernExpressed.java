package comparand.check;

import comparand.model.library.SourceState;

/**
 * What it checks: a source whose publisher expressed a concern about it.
 *
 * <p>Why it matters: its results may be corrected or withdrawn; they still take part, and say so wherever they are shown.
 *
 * <p>What to write instead: nothing; look again before the report is released, and see what rests on it.
 */
final class ConcernExpressed implements Rule {

    @Override
    public String code() {
        return "concern-expressed";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.library().sources().values().stream()
                .filter(s -> s.status().state().value() == SourceState.CONCERN)
                .forEach(s -> findings.note(
                        s.status().state().span(),
                        "a concern was expressed about `%s`%s"
                                .formatted(
                                        s.id(),
                                        s.status()
                                                .since()
                                                .map(d -> " (" + d.value() + ")")
                                                .orElse("")),
                        "its results may be corrected or withdrawn",
                        "look again before the report is released; a scenario with `leave-out: [%s]` says what rests on it"
                                .formatted(s.id())));
    }
}
