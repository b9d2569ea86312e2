package comparand.study;

import comparand.diag.Located;
import comparand.metric.Bounds;
import comparand.model.library.DataFileRecord;
import comparand.model.library.LimitRecord;
import comparand.study.quality.QualityRules;
import comparand.unit.PrintedRange;
import comparand.unit.Unit;
import java.util.Optional;

/** The limits that a file sets in place of the catalogue's, of metrics and of what they are computed from. */
record FileLimits(DataFileRecord mapping) implements QualityRules.OwnLimits {

    @Override
    public Optional<Bounds> possible(String quantity, Unit unit) {
        return mapping.limits().get(quantity).flatMap(LimitRecord::possible).map(r -> bounds(r, unit));
    }

    @Override
    public Optional<Bounds> plausible(String quantity, Unit unit) {
        return mapping.limits().get(quantity).flatMap(LimitRecord::plausible).map(r -> bounds(r, unit));
    }

    private static Bounds bounds(Located<PrintedRange> range, Unit unit) {
        return new Bounds(range.value().low().in(unit), range.value().high().in(unit));
    }
}
