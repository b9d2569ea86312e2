package comparand.check;

import comparand.model.Library.PublishedValue;
import comparand.model.library.SourceState;

/**
 * What it checks: a value that was last read before its source was corrected, or may have been.
 *
 * <p>Why it matters: the correction may have changed this very number.
 *
 * <p>What to write instead: a new reading under {@code read:}; the old number, if it changed, under {@code was:}.
 */
final class CorrectedAfterReading implements Rule {

    @Override
    public String code() {
        return "corrected-after-reading";
    }

    @Override
    public void check(Context library, Findings findings) {
        for (var source : library.library().sources().values()) {
            var status = source.status();
            if (status.state().value() != SourceState.CORRECTED) {
                continue;
            }
            if (status.since().isEmpty()) {
                findings.note(
                        status.state().span(),
                        "`%s` does not say when it was corrected".formatted(source.id()),
                        "a value read before the correction cannot be told from one read after it",
                        "add `since: ...` with the day or the month of the correction");
                continue;
            }
            // a correction known to its month may have come on the last day of it
            var latest = status.since().get().value().latest();
            var since = latest.isAfter(library.today()) ? library.today() : latest;
            source.values().stream()
                    .filter(v -> v.read().stream().allMatch(r -> r.on().value().isBefore(since)))
                    .forEach(v -> findings.hold(
                            new PublishedValue(source, v),
                            v.id().span(),
                            "`%s` may have been last read before the correction of `%s`"
                                    .formatted(v.id().value(), source.id()),
                            "the correction may have changed this very number",
                            "read it again in the corrected source; keep an old number under `was:`"));
        }
    }
}
