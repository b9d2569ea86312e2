package comparand.study.quality;

import java.util.Optional;

/**
 * Checks that a size class of bubbles runs from a smaller to a larger diameter, none below 0. It matters because the
 * volume of its bubbles is computed from both edges. The row is held. What to do: look at the export of the counter.
 */
final class BubbleBinReversed implements QualityRule {

    @Override
    public String code() {
        return "bubble-bin-reversed";
    }

    @Override
    public String why() {
        return "the volume of the bubbles in a class is computed from its edges";
    }

    @Override
    public String fix() {
        return "correct the edges, or exchange the columns that hold `bin-from` and `bin-to`";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        var from = row.given("bubble-bin-from");
        var to = row.given("bubble-bin-to");
        return from.isPresent() && to.isPresent() && (from.get() >= to.get() || from.get() < 0)
                ? Optional.of(QualityFinding.hold("the size class runs from %s to %s µm, not upwards from 0 µm or more"
                        .formatted(Amounts.plain(from.get(), 4), Amounts.plain(to.get(), 4))))
                : Optional.empty();
    }
}
