package comparand.study;

import comparand.metric.Aspect;
import comparand.metric.Crossed;
import comparand.metric.Definition;
import comparand.metric.Gathering;
import comparand.metric.Gathering.Over;
import comparand.metric.Metric;
import comparand.model.LocalMember;
import comparand.model.LocalPart;
import comparand.model.LocalScope;
import comparand.model.LocalSeries;
import comparand.model.Step;
import comparand.unit.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A group whose rows are all read: gathered to one number per member.
 *
 * @param definedByName whether the definition must be named to tell the group from another of the device
 * @param usual the definition the study's own results follow; a group by another one was made for a published value
 */
record SeriesDraft(
        Metric metric, GroupDraft group, Way way, ConditionFrame conditions, boolean definedByName, Definition usual) {

    /** More members than these are not named one by one. */
    private static final int NAMED = 3;

    /** One number per member; empty if no member has one, or the metric has only one number for all. */
    Optional<LocalSeries> series() {
        var members = way.gathering().fold(new Gathering.Cases<List<LocalMember>>() {
            @Override
            public List<LocalMember> eachRow(Gathering.EachRow each) {
                var members = members(m -> OptionalDouble.of(m.mean(0)));
                return group.hasOnlyOne() && members.size() == 1 && MetricOfStudy.isRunOfUnit(each, group.anyFile())
                        ? List.of(members.get(0).withRuns(group.sorted().get(0).each(0)))
                        : members;
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
                return found(m -> lowestOf(
                        lowest.crossings().stream().map(c -> crossed(c, m)).toList()));
            }
        });
        return members.isEmpty() ? Optional.empty() : Optional.of(series(members));
    }

    List<LocalMember> members(Function<MemberDraft, OptionalDouble> value) {
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
        return draft.member(value, way.inputs().size(), conditions.numbers());
    }

    List<LocalMember> ofSums() {
        return members(m -> OptionalDouble.of(way.apply(numbers(m::sum))));
    }

    private List<LocalMember> found(Function<MemberDraft, OptionalDouble> find) {
        return members(m -> {
            var found = find.apply(m);
            return found.isEmpty() ? found : OptionalDouble.of(way.apply(Map.of(Gathering.FOUND, found.getAsDouble())));
        });
    }

    Map<String, Double> numbers(IntToDoubleFunction of) {
        var numbers = new HashMap<String, Double>();
        for (int i = 0; i < way.inputs().size(); i++) {
            numbers.put(way.inputs().get(i), of.applyAsDouble(i));
        }
        return numbers;
    }

    int input(String id) {
        return way.inputs().indexOf(id);
    }

    private Crossed crossed(Gathering.Crossing crossing, MemberDraft member) {
        return crossing.of(member.each(input(crossing.xInput())), member.each(input(crossing.yInput())));
    }

    private static OptionalDouble at(Crossed crossed) {
        return crossed instanceof Crossed.At at ? OptionalDouble.of(at.x()) : OptionalDouble.empty();
    }

    /** The lowest crossing, if no other may lie below it. */
    private static OptionalDouble lowestOf(List<Crossed> all) {
        if (all.stream().anyMatch(c -> c instanceof Crossed.BelowSmallest)) {
            return OptionalDouble.empty();
        }
        return all.stream()
                .flatMap(c -> at(c).stream().boxed())
                .mapToDouble(x -> x)
                .min();
    }

    LocalSeries series(List<LocalMember> members) {
        var file = group.anyFile();
        return new LocalSeries(
                file.study(),
                String.join(", ", group.files().keySet()),
                metric,
                group.device(),
                group.definition(),
                scope(),
                label(),
                file.level(),
                conditions.varying(),
                conditions.worded(),
                conditions.fixed(),
                members,
                computed(members));
    }

    /** Where every outlet was full, a metric with a standard inlet tells of the blood that came in. */
    private Optional<Step> showsInlet(List<LocalMember> members) {
        return metric.inletStandard().flatMap(standard -> {
            int at = conditions.index(standard.outlet().id());
            double full = standard.full().in(standard.outlet().unit().orElse(Unit.ONE));
            return at >= 0 && members.stream().allMatch(m -> m.amount(at).orElse(0) >= full)
                    ? Optional.of(Step.of(
                            Step.Kind.CAUTIONED,
                            "",
                            "condition",
                            standard.outlet().name(),
                            "full",
                            standard.full().toString(),
                            "n",
                            String.valueOf(members.size()),
                            "level",
                            group.anyFile().level().plural()))
                    : Optional.empty();
        });
    }

    private List<Step> computed(List<LocalMember> members) {
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
            var level = group.anyFile().level();
            steps.add(Step.of(
                    Step.Kind.REPEATS,
                    "",
                    "members",
                    repeated.size() == members.size() && members.size() > NAMED ? "all" : String.join(", ", repeated),
                    "level",
                    level.singular()));
        }
        showsInlet(members).ifPresent(steps::add);
        return steps;
    }

    private String columns() {
        var headings = new TreeSet<String>();
        group.files()
                .values()
                .forEach(f -> way.plan()
                        .map(p -> p.given().stream().filter(f.given()::isInRows).map(f::heading))
                        .orElseGet(() -> Stream.of(f.heading(metric.id())))
                        .forEach(headings::add));
        return String.join(", ", headings);
    }

    LocalScope scope() {
        return new LocalScope(
                differing().isEmpty() ? LocalPart.WHOLE : LocalPart.MATCHED,
                "",
                group.steps().keySet());
    }

    /** The variants in which the group was computed otherwise than the study's own results. */
    private List<String> differing() {
        return group.definition().aspects().entrySet().stream()
                .filter(a -> metric.aspect(a.getKey())
                        .filter(Aspect.Choice.class::isInstance)
                        .isPresent())
                .filter(a -> usual.get(a.getKey())
                        .filter(own -> !own.equals(a.getValue()))
                        .isPresent())
                .map(a -> metric.aspect(a.getKey()).orElseThrow().shortName() + " " + String.join(" + ", a.getValue()))
                .toList();
    }

    /** What sets a group apart: its steps, and its definition where another group of the device differs by it. */
    String label() {
        var defined = group.files().values().stream()
                .flatMap(f -> f.columns().definedByRow().stream())
                .distinct()
                .filter(a -> definedByName)
                .flatMap(a -> metric.aspect(a).stream())
                .flatMap(a -> group.definition().get(a.id()).map(a::text).stream());
        return Stream.of(differing().stream(), defined, group.steps().values().stream())
                .flatMap(parts -> parts)
                .collect(Collectors.joining(", "));
    }
}
