package comparand.study;

import comparand.metric.Gathering;
import comparand.metric.Gathering.Over;
import comparand.model.Comparand;
import comparand.model.FittedLine;
import comparand.model.LocalMember;
import comparand.model.Step;
import comparand.model.Summary;
import comparand.stat.LineThroughOrigin;
import comparand.stat.MeanEstimate;
import comparand.stat.StraightLine;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** One number for a whole group, where the metric's gathering leaves none per member: a line, a ratio of sums, a median. */
record GroupEstimate(SeriesDraft draft) {

    /** The smallest number of members from which a line or a ratio of sums has a standard error. */
    private static final int FEWEST = 3;

    /** One number for the whole group, where the metric's gathering leaves no number per member. */
    Optional<Comparand> comparand() {
        return draft.way().gathering().fold(new Gathering.Cases<Optional<Comparand>>() {
            @Override
            public Optional<Comparand> eachRow(Gathering.EachRow each) {
                return Optional.empty();
            }

            @Override
            public Optional<Comparand> total(Gathering.Total total) {
                return Optional.empty();
            }

            @Override
            public Optional<Comparand> sums(Gathering.Sums sums) {
                return sums.over() == Over.GROUP ? ratioOfSums() : Optional.empty();
            }

            @Override
            public Optional<Comparand> median(Gathering.Median median) {
                var members = median.each() instanceof Gathering.EachRow
                        ? draft.members(m -> OptionalDouble.of(m.mean(0)))
                        : draft.ofSums();
                return members.isEmpty() ? Optional.empty() : Optional.of(medianOf(members));
            }

            @Override
            public Optional<Comparand> fit(Gathering.Fit fit) {
                return fit.over() == Over.GROUP ? line(fit) : Optional.empty();
            }

            @Override
            public Optional<Comparand> crossing(Gathering.Crossing crossing) {
                return Optional.empty();
            }

            @Override
            public Optional<Comparand> lowest(Gathering.Lowest lowest) {
                return Optional.empty();
            }
        });
    }

    /**
     * The formula on sums over all members. Its standard error is that of leaving out one member at a time:
     * {@code SE² = (n - 1)/n · Σ (θ₍ᵢ₎ - θ̄)²}; Efron and Tibshirani, An Introduction to the Bootstrap, 1993, ch. 11 (from
     * memory).
     */
    private Optional<Comparand> ratioOfSums() {
        var drafts = draft.group().sorted();
        if (drafts.size() < FEWEST) {
            return Optional.empty();
        }
        ToDoubleFunction<List<MemberDraft>> formula = some -> draft.way()
                .apply(draft.numbers(
                        i -> some.stream().mapToDouble(m -> m.sum(i)).sum()));
        double all = formula.applyAsDouble(drafts);
        var without = drafts.stream()
                .mapToDouble(left -> formula.applyAsDouble(
                        drafts.stream().filter(m -> m != left).toList()))
                .toArray();
        double mean = Arrays.stream(without).average().orElse(0);
        double squares =
                Arrays.stream(without).map(t -> (t - mean) * (t - mean)).sum();
        int n = drafts.size();
        return estimated(
                new MeanEstimate(all, Math.sqrt((n - 1.0) / n * squares), n - 1), "leave one out", Optional.empty());
    }

    /** A line through one point per member. */
    private Optional<Comparand> line(Gathering.Fit fit) {
        var drafts = draft.group().sorted();
        var x = drafts.stream()
                .mapToDouble(m -> m.mean(draft.input(fit.xInput())))
                .toArray();
        var y = drafts.stream()
                .mapToDouble(m -> m.mean(draft.input(fit.yInput())))
                .toArray();
        if (x.length < FEWEST || fit.of(x, y).isEmpty()) {
            return Optional.empty();
        }
        if (fit.form() == Gathering.Fit.Form.THROUGH_ORIGIN) {
            var line = LineThroughOrigin.through(x, y);
            return slope(line.slope(), line.slopeSe(), line.n() - 1, Optional.empty());
        }
        var line = StraightLine.through(x, y);
        var along = draft.way().input(fit.xInput());
        var of = draft.way().input(fit.yInput());
        var fitted = new FittedLine(along.meaning(), along.unit(), of.meaning(), of.unit(), line);
        return slope(line.slope(), line.slopeSe(), line.n() - 2, Optional.of(fitted));
    }

    private Optional<Comparand> slope(double slope, double se, int df, Optional<FittedLine> line) {
        double value = draft.way().apply(Map.of(Gathering.FOUND, slope));
        double scale = slope == 0 ? 1 : Math.abs(value / slope);
        return estimated(new MeanEstimate(value, se * scale, df), "least squares, one point per member", line);
    }

    private Optional<Comparand> estimated(MeanEstimate estimate, String how, Optional<FittedLine> line) {
        var members = draft.members(m -> OptionalDouble.of(estimate.mean()));
        var step = Step.of(
                Step.Kind.ESTIMATED,
                how,
                "n",
                String.valueOf(members.size()),
                "level",
                draft.group().anyFile().level().plural(),
                "value",
                String.valueOf(estimate.mean()),
                "se",
                String.valueOf(estimate.se()));
        return Optional.of(draft.series(members)
                .with(
                        new Summary.Estimated(estimate, members.size(), line),
                        members,
                        draft.label(),
                        draft.scope(),
                        List.of(step)));
    }

    private Comparand medianOf(List<LocalMember> members) {
        var sorted = members.stream().mapToDouble(LocalMember::value).sorted().toArray();
        int half = sorted.length / 2;
        double median = sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
        var step = Step.of(
                Step.Kind.ESTIMATED,
                "median",
                "n",
                String.valueOf(members.size()),
                "level",
                draft.group().anyFile().level().plural(),
                "value",
                String.valueOf(median),
                "se",
                "none");
        return draft.series(members)
                .with(
                        new Summary.Point(median, 0, Summary.PointKind.MEDIAN),
                        members,
                        draft.label(),
                        draft.scope(),
                        List.of(step));
    }
}
