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
                .filter(s -> s.status().state().value() == SourceState.CURRENT
                        || s.status().state().value() == SourceState.CORRECTED)
                .filter(s -> s.status().checked().value().plusDays(LONGEST_DAYS).isBefore(library.today()))
                .sorted(Comparator.comparing(s -> s.status().checked().value()))
                .toList();
        if (!oldest.isEmpty()) {
            var first = oldest.get(0).status().checked();
            findings.note(
                    first.span(),
                    "%d sources were last checked for corrections more than %d days ago, the oldest on %s"
                            .formatted(oldest.size(), LONGEST_DAYS, first.value()),
                    "a source may have been withdrawn meanwhile",
                    "look for notices and update `checked:` in: "
                            + String.join(
                                    ", ", oldest.stream().map(SourceRecord::id).toList()));
        }
    }
}
