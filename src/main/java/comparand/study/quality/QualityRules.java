package comparand.study.quality;

import comparand.metric.Bounds;
import comparand.unit.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All rules, in the order in which they look at a row. */
public final class QualityRules {

    /** Limits that a file declares for itself. */
    public interface OwnLimits {

        /** What a quantity can be in this file, in a unit. */
        Optional<Bounds> possible(String quantity, Unit unit);

        /** What it usually is in this file, in a unit. */
        Optional<Bounds> plausible(String quantity, Unit unit);
    }

    private QualityRules() {}

    /** Rules for one file, made anew. */
    public static List<QualityRule> forFile(OwnLimits own) {
        var rules = new ArrayList<QualityRule>();
        InputLimits.TABLE.stream()
                .map(l -> l.with(
                        own.possible(l.id(), l.unit()).orElse(l.possible()),
                        own.plausible(l.id(), l.unit()).orElse(l.plausible())))
                .forEach(limit -> {
                    rules.add(new InputPossible(limit));
                    rules.add(new InputPlausible(limit));
                });
        rules.addAll(List.of(
                new BubbleBinReversed(),
                new BubblesOnlyDownstream(),
                new BubbleBinsOverlap(),
                new NoBloodFlow(),
                new SamplesSwapped(),
                new CarbonDioxideNotLowered(),
                new SaturationAgainstPressure("inlet-saturation"),
                new SaturationAgainstPressure("outlet-saturation"),
                new BaseExcessAgainstPh(),
                new HaemoglobinAgainstHaematocrit(),
                new PressuresSwapped(),
                new ExchangeRatioUnusual(),
                new IdealContentReached(),
                new WaterNearBlood(),
                new OutletBeyondWater(),
                new FlowForBody(),
                new BloodGivenBetween(),
                new DeviceChanged(),
                new MinutesBackwards(),
                new RemarkStands()));
        return List.copyOf(rules);
    }
}
