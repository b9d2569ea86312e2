package comparand.normalise;

import comparand.model.Comparand;
import comparand.model.FittedLine;
import comparand.model.LocalMember;
import comparand.model.LocalPart;
import comparand.model.LocalScope;
import comparand.model.LocalSeries;
import comparand.model.Step;
import comparand.model.Summary;
import comparand.normalise.LocalFooting.Wanted;
import comparand.stat.StraightLine;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The least-squares line through one point per case, read at the condition of a published value, with its standard error.
 * Only within what was measured, from five cases at three places on.
 */
final class Regression {

    private static final int FEWEST = 5;
    private static final int FEWEST_PLACES = 3;

    private Regression() {}

    /** The line's value; empty if the results as a whole meet the condition, or no line may be read there. */
    static Optional<Comparand> of(LocalSeries series, Wanted wanted) {
        var index = series.index(wanted.id());
        boolean stepped = series.scope().steps().contains(wanted.id());
        boolean met = wanted.in(series.whole()).filter(wanted::isMetBy).isPresent();
        if (index.isEmpty() || stepped || met) {
            return Optional.empty();
        }
        int i = index.get();
        var points =
                series.members().stream().filter(m -> m.amount(i).isPresent()).toList();
        var x = points.stream().mapToDouble(m -> m.amount(i).orElseThrow()).toArray();
        var y = points.stream().mapToDouble(LocalMember::value).toArray();
        long places = Arrays.stream(x).distinct().count();
        if (points.size() < FEWEST || places < FEWEST_PLACES) {
            return Optional.empty();
        }
        var line = StraightLine.through(x, y);
        if (!line.measured().contains(wanted.amount())) {
            return Optional.empty();
        }
        var estimate = line.at(wanted.amount());
        var there = points.stream().map(m -> m.at(i, wanted.amount())).toList();
        var step = Step.of(
                Step.Kind.REGRESSED,
                "y = ȳ + b (x - x̄)",
                "over",
                wanted.use().condition().name(),
                "at",
                wanted.text(),
                "slope",
                String.valueOf(line.slope()),
                "n",
                String.valueOf(points.size()),
                "level",
                series.level().plural(),
                "value",
                String.valueOf(estimate.mean()),
                "se",
                String.valueOf(estimate.se()));
        return Optional.of(series.with(
                new Summary.Estimated(
                        estimate,
                        points.size(),
                        Optional.of(new FittedLine(
                                wanted.use().condition().name(),
                                wanted.unit(),
                                series.metric().name(),
                                series.metric().unit(),
                                line))),
                there,
                Selection.label(series, "line read at " + wanted.text()),
                new LocalScope(LocalPart.MATCHED, "", series.scope().steps()),
                List.of(step)));
    }
}
