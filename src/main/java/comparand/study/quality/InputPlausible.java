package comparand.study.quality;

import comparand.study.quality.InputLimits.Limit;
import java.util.Optional;

/**
 * Checks that a number is one that is met in practice. It matters because an unusual number is a slip more often than an
 * unusual case. The row is kept and pointed out. What to do: look at it once more; nothing if it was measured.
 */
final class InputPlausible implements QualityRule {

    private final Limit limit;

    InputPlausible(Limit limit) {
        this.limit = limit;
    }

    @Override
    public String code() {
        return "input-implausible";
    }

    @Override
    public String why() {
        return "an unusual number may be a slip of a digit, a unit or a column";
    }

    @Override
    public String fix() {
        return "look at the row once more; nothing to mend if this was measured";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        return Fluids.hasNoCells(row, limit.id())
                ? Optional.empty()
                : row.written(limit.id())
                        .filter(w -> limit.possible().contain(w.in(limit.unit())))
                        .filter(w -> !limit.plausible().contain(w.in(limit.unit())))
                        .map(w -> QualityFinding.remark("`%s` %s is outside of the usual %s%s"
                                .formatted(
                                        limit.id(),
                                        w,
                                        LimitText.of(limit.plausible(), limit.unit()),
                                        LimitText.hint(limit, w))));
    }
}
