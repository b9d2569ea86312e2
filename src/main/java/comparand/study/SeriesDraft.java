package comparand.study;

import comparand.diag.Diagnostic;
import comparand.metric.Crossed;
import comparand.metric.Gathering;
import comparand.metric.Gathering.Over;
import comparand.metric.Metric;
import comparand.model.Comparand;
import comparand.model.LocalMember;
import comparand.model.LocalPart;
import comparand.model.LocalSeries;
import comparand.model.Step;
import comparand.model.Summary;
import comparand.stat.LineThroughOrigin;
import comparand.stat.MeanEstimate;
import comparand.stat.StraightLine;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A group whose rows are all read: gathered to one number per member, or to one for all of them. */
record SeriesDraft(
        Metric metric,
        GroupDraft group,
        Way way,
        ConditionFrame conditions,
        boolean definedByName,
        List<Diagnostic> findings) {

    /** The smallest number of members from which a line or a ratio of sums has a standard error. */
    private static final int FEWEST = 3;

    /** One number per member; empty if no member has one, or the metric has only one number for all. */
    Optional<LocalSeries> series() {
        var members = way.gathering().fold(new Gathering.Cases<List<LocalMember>>() {
            @Override
            public List<LocalMember> eachRow(Gathering.EachRow each) {
                return members(m -> OptionalDouble.of(m.mean(0)));
            }

            @Override
            public List<LocalMember> total(Gathering.Total total) {
                return members(m -> OptionalDouble.of(m.sum(0)));
            }

            @Override
            public List<LocalMember> sums(Gathering.Sums sums) {
                return sums.over() == Over.MEMBER ? ofSums() : List.of();
            }

            @Override
            public List<LocalMember> median(Gathering.Median median) {
                return List.of();
            }

            @Override
            public List<LocalMember> fit(Gathering.Fit fit) {
                return fit.over() == Over.MEMBER
                        ? found(m -> fit.of(m.each(input(fit.xInput())), m.each(input(fit.yInput()))))
                        : List.of();
            }

            @Override
            public List<LocalMember> crossing(Gathering.Crossing crossing) {
                return found(m -> at(crossed(crossing, m)));
            }

            @Override
            public List<LocalMember> lowest(Gathering.Lowest lowest) {
                return found(m -> lowest(lowest.crossings().stream()
                        .map(c -> crossed(c, m))
                        .toList()));
            }
        });
        return members.isEmpty() ? Optional.empty() : Optional.of(series(members));
    }

    /** One number for the whole group, where the metric's gathering leaves no number per member. */
    Optional<Comparand> together() {
        return way.gathering().fold(new Gathering.Cases<Optional<Comparand>>() {
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
                        ? members(m -> OptionalDouble.of(m.mean(0)))
                        : ofSums();
                return members.isEmpty() ? Optional.empty() : Optional.of(median(members));
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

    private List<LocalMember> members(Function<MemberDraft, OptionalDouble> value) {
        var members = new ArrayList<LocalMember>();
        for (var draft : group.sorted()) {
            value.apply(draft).ifPresent(v -> {
                if (Double.isFinite(v)) {
                    members.add(member(draft, v));
                }
            });
        }
        return members;
    }

    private LocalMember member(MemberDraft draft, double value) {
        int inputs = way.inputs().size();
        var amounts = new double[conditions.numbers()];
        for (int i = 0; i < amounts.length; i++) {
            amounts[i] = draft.mean(inputs + i);
        }
        return new LocalMember(draft.id(), draft.centre(), value, amounts, draft.words(), draft.rows());
    }

    private List<LocalMember> ofSums() {
        return members(m -> OptionalDouble.of(way.apply(numbers(m::sum))));
    }

    private List<LocalMember> found(Function<MemberDraft, OptionalDouble> find) {
        return members(m -> {
            var found = find.apply(m);
            return found.isEmpty()
                    ? found
                    : OptionalDouble.of(way.apply(Map.of(Gathering.FOUND, found.getAsDouble())));
        });
    }

    private Map<String, Double> numbers(IntToDoubleFunction of) {
        var numbers = new HashMap<String, Double>();
        for (int i = 0; i < way.inputs().size(); i++) {
            numbers.put(way.inputs().get(i), of.applyAsDouble(i));
        }
        return numbers;
    }

    private int input(String id) {
        return way.inputs().indexOf(id);
    }

    private Crossed crossed(Gathering.Crossing crossing, MemberDraft member) {
        return crossing.of(member.each(input(crossing.xInput())), member.each(input(crossing.yInput())));
    }

    private static OptionalDouble at(Crossed crossed) {
        return crossed instanceof Crossed.At at ? OptionalDouble.of(at.x()) : OptionalDouble.empty();
    }

    /** The lowest crossing, if no other may lie below it. */
    private static OptionalDouble lowest(List<Crossed> all) {
        if (all.stream().anyMatch(c -> c instanceof Crossed.BelowSmallest)) {
            return OptionalDouble.empty();
        }
        return all.stream()
                .flatMap(c -> at(c).stream().boxed())
                .mapToDouble(x -> x)
                .min();
    }

    private LocalSeries series(List<LocalMember> members) {
        var file = group.files().values().iterator().next();
        return new LocalSeries(
                file.study(),
                String.join(", ", group.files().keySet()),
                metric,
                group.device(),
                group.definition(),
                label(),
                file.level(),
                conditions.varying(),
                conditions.worded(),
                conditions.fixed(),
                members,
                computed(members.size()));
    }

    private List<Step> computed(int members) {
        var steps = new ArrayList<Step>();
        steps.add(Step.of(
                Step.Kind.COMPUTED,
                way.formula(),
                "file",
                String.join(", ", group.files().keySet()),
                "rows",
                String.valueOf(group.rows()),
                "columns",
                columns()));
        var repeated = group.repeated();
        if (!repeated.isEmpty() && way.gathering() instanceof Gathering.EachRow) {
            var level = group.files().values().iterator().next().level();
            steps.add(Step.of(
                    Step.Kind.REPEATS,
                    "",
                    "members",
                    repeated.size() == members && members > FEWEST ? "all" : String.join(", ", repeated),
                    "level",
                    level.singular()));
        }
        return steps;
    }

    private String columns() {
        var headings = new TreeSet<String>();
        group.files().values().forEach(f -> way.plan()
                .map(p -> p.given().stream().filter(f.given()::isInRows).map(f::heading))
                .orElseGet(() -> Stream.of(f.heading(metric.id())))
                .forEach(headings::add));
        return String.join(", ", headings);
    }

    /** What sets a group apart: its steps, and its definition where another group of the device differs by it. */
    private String label() {
        var defined = group.files().values().stream()
                .flatMap(f -> f.columns().definedByRow().stream())
                .distinct()
                .filter(a -> definedByName)
                .flatMap(a -> metric.aspect(a).stream())
                .flatMap(a -> group.definition().get(a.id()).map(a::text).stream());
        return Stream.concat(defined, group.steps().values().stream()).collect(Collectors.joining(", "));
    }

    /**
     * The formula on sums over all members. Its standard error is that of leaving out one member at a time:
     * {@code SE² = (n - 1)/n · Σ (θ₍ᵢ₎ - θ̄)²}; Efron and Tibshirani, An Introduction to the Bootstrap, 1993, ch. 11 (from
     * memory).
     */
    private Optional<Comparand> ratioOfSums() {
        var drafts = group.sorted();
        if (drafts.size() < FEWEST) {
            return Optional.empty();
        }
        ToDoubleFunction<List<MemberDraft>> formula = some ->
                way.apply(numbers(i -> some.stream().mapToDouble(m -> m.sum(i)).sum()));
        double all = formula.applyAsDouble(drafts);
        var without = drafts.stream()
                .mapToDouble(left ->
                        formula.applyAsDouble(drafts.stream().filter(m -> m != left).toList()))
                .toArray();
        double mean = Arrays.stream(without).average().orElse(0);
        double squares =
                Arrays.stream(without).map(t -> (t - mean) * (t - mean)).sum();
        int n = drafts.size();
        return estimated(new MeanEstimate(all, Math.sqrt((n - 1.0) / n * squares), n - 1), "leave one out");
    }

    /** A line through one point per member. */
    private Optional<Comparand> line(Gathering.Fit fit) {
        var drafts = group.sorted();
        var x = drafts.stream().mapToDouble(m -> m.mean(input(fit.xInput()))).toArray();
        var y = drafts.stream().mapToDouble(m -> m.mean(input(fit.yInput()))).toArray();
        if (x.length < FEWEST || fit.of(x, y).isEmpty()) {
            return Optional.empty();
        }
        double slope;
        double se;
        double df;
        if (fit.form() == Gathering.Fit.Form.THROUGH_ORIGIN) {
            var line = LineThroughOrigin.through(x, y);
            slope = line.slope();
            se = line.slopeSe();
            df = line.n() - 1;
        } else {
            var line = StraightLine.through(x, y);
            slope = line.slope();
            se = line.slopeSe();
            df = line.n() - 2;
        }
        double value = way.apply(Map.of(Gathering.FOUND, slope));
        double scale = slope == 0 ? 1 : Math.abs(value / slope);
        return estimated(new MeanEstimate(value, se * scale, df), "least squares, one point per member");
    }

    private Optional<Comparand> estimated(MeanEstimate estimate, String how) {
        var members = members(m -> OptionalDouble.of(estimate.mean()));
        var step = Step.of(
                Step.Kind.ESTIMATED,
                how,
                "n",
                String.valueOf(members.size()),
                "level",
                group.files().values().iterator().next().level().plural(),
                "value",
                String.valueOf(estimate.mean()),
                "se",
                String.valueOf(estimate.se()));
        return Optional.of(series(members)
                .with(new Summary.Estimated(estimate, members.size()), members, label(), LocalPart.WHOLE, List.of(step)));
    }

    private Comparand median(List<LocalMember> members) {
        var sorted = members.stream().mapToDouble(LocalMember::value).sorted().toArray();
        int half = sorted.length / 2;
        double median = sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
        var step = Step.of(
                Step.Kind.ESTIMATED,
                "median",
                "n",
                String.valueOf(members.size()),
                "level",
                group.files().values().iterator().next().level().plural(),
                "value",
                String.valueOf(median),
                "se",
                "none");
        return series(members)
                .with(
                        new Summary.Point(median, 0, Summary.PointKind.MEDIAN),
                        members,
                        label(),
                        LocalPart.WHOLE,
                        List.of(step));
    }
}
