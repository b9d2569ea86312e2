package comparand.study.quality;

import comparand.metric.Bounds;
import comparand.study.quality.InputLimits.Limit;
import comparand.unit.Unit;

/** How findings speak of limits. */
final class LimitText {

    private LimitText() {}

    /** Such as {@code 3 to 25 g/dL}. */
    static String of(Bounds bounds, Unit unit) {
        return "%s to %s"
                .formatted(Amounts.plain(bounds.low(), 6), Amounts.text(Amounts.plain(bounds.high(), 6), unit));
    }

    /** Behind a finding: the unit that explains the number; nothing where none does. */
    static String hint(Limit limit, Written written) {
        return OtherUnits.explain(limit, written).map(h -> "; " + h).orElse("");
    }
}
