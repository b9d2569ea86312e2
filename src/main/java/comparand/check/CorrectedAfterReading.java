package comparand.check;

import comparand.model.Library.PublishedValue;
import comparand.model.library.SourceState;

/**
 * What it checks: a value that was last read before its source was corrected.
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
            var since = source.status().since().map(d -> d.value().earliest());
            if (source.status().state().value() != SourceState.CORRECTED || since.isEmpty()) {
                continue;
            }
            source.values().stream()
                    .filter(v ->
                            v.read().stream().noneMatch(r -> !r.on().value().isBefore(since.get())))
                    .forEach(v -> findings.hold(
                            new PublishedValue(source, v),
                            v.id().span(),
                            "`%s` was last read before the correction of `%s`".formatted(v.id().value(), source.id()),
                            "the correction may have changed this very number",
                            "read it again in the corrected source; keep an old number under `was:`"));
        }
    }
}
