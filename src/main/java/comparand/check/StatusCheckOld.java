package comparand.check;

import comparand.model.library.SourceRecord;
import comparand.model.library.SourceState;
import java.util.Comparator;

/**
 * What it checks: sources that were last checked for corrections more than 90 days before the report.
 *
 * <p>Why it matters: they may have been corrected or withdrawn meanwhile.
 *
 * <p>What to write instead: the day of a new check under {@code status:}.
 */
final class StatusCheckOld implements Rule {

    @Override
    public String code() {
        return "status-check-old";
    }

    private static final int LONGEST_DAYS = 90;

    @Override
    public void check(Context library, Findings findings) {
        var oldest = library.library().sources().values().stream()
                .filter(s -> mayChange(s.status().state().value()))
                .filter(s -> s.status().checked().value().plusDays(LONGEST_DAYS).isBefore(library.today()))
                .sorted(Comparator.comparing(s -> s.status().checked().value()))
                .toList();
        if (!oldest.isEmpty()) {
            var first = oldest.get(0).status().checked();
            findings.note(
                    first.span(),
                    "last checked for corrections more than %d days ago: %d of the sources, the oldest on %s"
                            .formatted(LONGEST_DAYS, oldest.size(), first.value()),
                    "a source may have been withdrawn meanwhile",
                    "look for notices and update `checked:` in: "
                            + String.join(
                                    ", ", oldest.stream().map(SourceRecord::id).toList()));
        }
    }

    /** A source that was withdrawn or replaced is not used, whatever becomes of it. */
    private static boolean mayChange(SourceState state) {
        return switch (state) {
            case CURRENT, CORRECTED, CONCERN -> true;
            case RETRACTED, SUPERSEDED, PREPRINT -> false;
        };
    }
}
