package comparand.study.quality;

import comparand.metric.Bounds;
import java.util.Optional;

/**
 * Checks that blood leaves with a temperature between its own at the inlet and that of the water, give or take a
 * twentieth of their difference. It matters because no heat exchanger goes beyond its water: a probe was read before it
 * settled. The row is kept from the metrics of heat exchange. What to do: look at the record of the temperatures.
 */
final class OutletBeyondWater implements QualityRule {

    private static final String OUTLET = "outlet-blood-temperature";
    private static final double LEAST_APART = 3;
    private static final Bounds BETWEEN = new Bounds(-0.05, 1.05);

    @Override
    public String code() {
        return "outlet-beyond-water";
    }

    @Override
    public String why() {
        return "no heat exchanger goes beyond its water: a probe was read before it settled";
    }

    @Override
    public String fix() {
        return "compare with the record of temperatures; correct the cell, or empty it";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        var water = row.given("inlet-water-temperature");
        var before = row.given("inlet-blood-temperature");
        var id = row.given(OUTLET).isPresent() ? OUTLET : "temperature";
        var after = row.given(id);
        if (water.isEmpty() || before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        double apart = water.get() - before.get();
        double reached = (after.get() - before.get()) / apart;
        return Math.abs(apart) >= LEAST_APART && !BETWEEN.contain(reached)
                ? Optional.of(new QualityFinding(
                        "`%s` %s °C is not between blood %s °C and water %s °C at the inlet"
                                .formatted(
                                        id,
                                        Amounts.plain(after.get(), 3),
                                        Amounts.plain(before.get(), 3),
                                        Amounts.plain(water.get(), 3)),
                        Effect.exclude("performance-factor", "performance-factor-uncertainty", "heat-flow")))
                : Optional.empty();
    }
}
