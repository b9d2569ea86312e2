package comparand.study.quality;

import java.util.List;
import java.util.Optional;

/**
 * Checks that bubbles behind the device were seen before it as well. It matters because no reduction can be computed
 * from nothing, and most often the two probes were exchanged. The row is held. What to do: look at which probe sat
 * where.
 */
final class BubblesOnlyDownstream implements QualityRule {

    /** Totals only: a single size class may well be empty upstream, where bubbles were larger. */
    private static final List<String> COUNTED = List.of("bubble-count-", "bubble-volume-");

    @Override
    public String code() {
        return "bubbles-only-downstream";
    }

    @Override
    public String why() {
        return "a reduction from nothing does not exist; most often the two probes were exchanged";
    }

    @Override
    public String fix() {
        return "check which probe sat where; exchange the columns or the codes of the channel, or list the row under `dropped:`";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        for (var counted : COUNTED) {
            var before = row.given(counted + "upstream");
            var after = row.given(counted + "downstream");
            if (before.filter(n -> n == 0).isPresent()
                    && after.filter(n -> n > 0).isPresent()) {
                return Optional.of(QualityFinding.hold("`%sdownstream` is %s although `%supstream` is 0"
                        .formatted(counted, Amounts.plain(after.get(), 6), counted)));
            }
        }
        return Optional.empty();
    }
}
