package comparand.study.quality;

import comparand.study.quality.InputLimits.Limit;
import java.util.Optional;

/**
 * Checks that a number can be at all: haemoglobin of 112 g/dL cannot. It matters because one slip of a digit or a unit moves
 * the mean of its group. The row is held; where the digits make sense in another unit, the finding says so. What to do:
 * correct the cell, or the unit of the column.
 */
final class InputPossible implements QualityRule {

    private final Limit limit;

    InputPossible(Limit limit) {
        this.limit = limit;
    }

    @Override
    public String code() {
        return "input-impossible";
    }

    @Override
    public String why() {
        return "one slip of a digit or unit moves the mean of its group, so the row is kept out";
    }

    @Override
    public String fix() {
        return "correct the cell, or `unit:` of its column; or list the row under `dropped:` with a reason";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        return Fluids.hasNoCells(row, limit.id())
                ? Optional.empty()
                : row.written(limit.id())
                        .filter(w -> !limit.possible().contain(w.in(limit.unit())))
                        .map(w -> QualityFinding.hold("`%s` %s is outside of %s%s"
                                .formatted(
                                        limit.id(),
                                        w,
                                        LimitText.of(limit.possible(), limit.unit()),
                                        LimitText.hint(limit, w))));
    }
}
