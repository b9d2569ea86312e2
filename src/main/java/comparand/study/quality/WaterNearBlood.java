package comparand.study.quality;

import java.util.Optional;

/**
 * Checks that water and blood differ by 3 °C or more where they enter. It matters because the performance factor divides
 * by that difference: at 1 °C a sensor that is 0.1 °C off moves it by 0.12. The row is kept from the performance factor.
 * What to do: nothing; such rows belong to steady phases.
 */
final class WaterNearBlood implements QualityRule {

    private static final double LEAST_APART = 3;

    @Override
    public String code() {
        return "water-near-blood";
    }

    @Override
    public String why() {
        return "the performance factor divides by this difference, and drowns in the error of the sensors";
    }

    @Override
    public String fix() {
        return "nothing to mend: measure the performance factor while cooling or rewarming";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        var water = row.given("inlet-water-temperature");
        var blood = row.given("inlet-blood-temperature");
        return water.isPresent() && blood.isPresent() && Math.abs(water.get() - blood.get()) < LEAST_APART
                ? Optional.of(new QualityFinding(
                        "`inlet-water-temperature` %s °C is less than 3 °C from `inlet-blood-temperature` %s °C"
                                .formatted(Amounts.plain(water.get(), 3), Amounts.plain(blood.get(), 3)),
                        Effect.silentOn("performance-factor")))
                : Optional.empty();
    }
}
