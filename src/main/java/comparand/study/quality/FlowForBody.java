package comparand.study.quality;

import comparand.metric.Bounds;
import java.util.Optional;

/**
 * Checks that the blood flow fits the patient: at most 4 L/min per m² of body surface, and 50 to 250 mL/min per kg. It
 * matters because a flow in another unit, or the weight of another case, spoils every indexed result. The row is kept
 * and pointed out; a stopped pump is another matter. What to do: look at flow, weight and height.
 */
final class FlowForBody implements QualityRule {

    private static final double MOST_PER_SURFACE = 4;
    private static final Bounds PER_WEIGHT = new Bounds(50, 250);

    @Override
    public String code() {
        return "flow-unusual-for-body";
    }

    @Override
    public String why() {
        return "a flow in another unit, or the weight of another case, spoils every indexed result";
    }

    @Override
    public String fix() {
        return "check flow, weight and height of the case and their units; nothing to mend if this was run";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        if (!Fluids.flows(row)) {
            return Optional.empty();
        }
        var index = row.number("flow-index").filter(i -> i > MOST_PER_SURFACE);
        var perWeight = row.number("flow-per-body-weight").filter(f -> !PER_WEIGHT.contain(f));
        return index.map(i -> "`flow-index` %s L/min/m² is above 4 L/min/m²".formatted(Amounts.plain(i, 3)))
                .or(() -> perWeight.map(f -> "`flow-per-body-weight` %s mL/kg/min is outside of 50 to 250 mL/kg/min"
                        .formatted(Amounts.plain(f, 3))))
                .map(QualityFinding::remark);
    }
}
