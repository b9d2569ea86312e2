package comparand.model;

import static java.util.Objects.requireNonNull;

import comparand.metric.Condition;
import comparand.metric.Definition;
import comparand.metric.Metric;
import comparand.model.library.SampleUnit;
import comparand.model.library.StudyRecord;
import comparand.stat.ExactSum;
import comparand.stat.LocalMean;
import comparand.stat.Moments;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The independent results of one metric, device and step, before they are summarised: what means, selections and lines are
 * taken from. One number per member; nobody counts twice.
 *
 * @param files the raw files the results come from, as trails name them
 * @param scope whether it speaks for the study's results, or was made to meet the definition of a published value
 * @param label the step or definition that sets the series apart, as printed; empty if nothing does
 * @param varying conditions in numbers, in the order of the members' amounts
 * @param worded conditions in words, in the order of the members' words
 * @param fixed conditions that hold for every row
 * @param members by centre and id
 * @param computed the steps from the raw files to the members' numbers
 */
public record LocalSeries(
        StudyRecord study,
        String files,
        Metric metric,
        String device,
        Definition definition,
        LocalScope scope,
        String label,
        SampleUnit level,
        List<VaryingCondition> varying,
        List<Condition> worded,
        Map<String, Circumstance> fixed,
        List<LocalMember> members,
        List<Step> computed) {

    public LocalSeries {
        requireNonNull(metric, "metric");
        requireNonNull(scope, "scope");
        varying = List.copyOf(varying);
        worded = List.copyOf(worded);
        fixed = Collections.unmodifiableMap(new LinkedHashMap<>(fixed));
        members = List.copyOf(members);
        computed = List.copyOf(computed);
        if (members.isEmpty()) {
            throw new IllegalArgumentException("a series has members");
        }
    }

    /** All members together. */
    public Comparand whole() {
        return of(members, label, scope, List.of());
    }

    /** The members of one centre. */
    public Comparand ofCentre(String centre) {
        var own = members.stream().filter(m -> m.centre().equals(centre)).toList();
        return of(
                own,
                label.isEmpty() ? centre : label + ", " + centre,
                new LocalScope(LocalPart.CENTRE, centre, scope.steps()),
                List.of());
    }

    /** The centres that have members, by name; without one that is not named. */
    public List<String> centres() {
        var centres = new TreeSet<String>();
        members.forEach(m -> centres.add(m.centre()));
        centres.remove("");
        return List.copyOf(centres);
    }

    /** Where a condition stands among the members' amounts. */
    public Optional<Integer> index(String condition) {
        for (int i = 0; i < varying.size(); i++) {
            if (varying.get(i).condition().id().equals(condition)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    /**
     * Some members as a comparand: the mean and standard deviation over them.
     *
     * @param group what sets them apart, as printed
     * @param steps what was done to choose them
     */
    public Comparand of(List<LocalMember> some, String group, LocalScope of, List<Step> steps) {
        var trail = new ArrayList<>(steps);
        return with(summary(some, trail), some, group, of, trail);
    }

    /**
     * A summary of some members that is no plain mean of theirs.
     *
     * @param steps from the members to it
     */
    public Comparand with(Summary summary, List<LocalMember> some, String group, LocalScope of, List<Step> steps) {
        var trail = new ArrayList<>(computed);
        trail.addAll(steps);
        var name = device.equals(Comparand.ALL_DEVICES) ? "all-devices" : device;
        var id = String.join("/", study.id(), metric.id(), name) + (group.isEmpty() ? "" : "/" + group);
        return new Comparand(
                id,
                new Origin.Local(study, files, group, of),
                device,
                metric,
                definition,
                summary,
                sizes(some),
                conditions(some),
                trail);
    }

    private Summary summary(List<LocalMember> some, List<Step> trail) {
        if (some.size() == 1 && some.get(0).runs().length < 2) {
            double value = some.get(0).value();
            trail.add(summarised("", 1, level, String.valueOf(value), "none"));
            return new Summary.Point(value, 0, Summary.PointKind.SINGLE);
        }
        return some.size() == 1 ? ofOneUnit(some.get(0).runs(), trail) : ofMembers(some, trail);
    }

    /** Its runs tell how well the one unit repeats itself, and nothing of other units. */
    private Summary ofOneUnit(double[] runs, List<Step> trail) {
        var moments = Moments.of(runs);
        trail.add(summarised(moments, level.below()));
        return new Summary.Sampled(
                moments,
                Label.REPORTED,
                0,
                Arrays.stream(runs).boxed().toList(),
                Optional.of(LocalMean.ofOneUnit(runs)));
    }

    private Summary ofMembers(List<LocalMember> some, List<Step> trail) {
        var each = some.stream().map(LocalMember::value).sorted().toList();
        var moments = Moments.of(each.stream().mapToDouble(d -> d).toArray());
        trail.add(summarised(moments, level));
        var local = LocalMean.of(valuesByCentre(some), Answer.LEVEL).value();
        local.filter(m -> !m.coversFurther()).ifPresent(m -> trail.add(overCentres(m)));
        return new Summary.Sampled(moments, Label.REPORTED, 0, each, local);
    }

    /** One list for each centre, by name; those without one stand together. */
    private static List<double[]> valuesByCentre(List<LocalMember> some) {
        var centres = new TreeMap<String, List<Double>>();
        some.forEach(
                m -> centres.computeIfAbsent(m.centre(), c -> new ArrayList<>()).add(m.value()));
        return centres.values().stream()
                .map(values -> values.stream().mapToDouble(v -> v).sorted().toArray())
                .toList();
    }

    private static Step overCentres(LocalMean mean) {
        return Step.of(
                Step.Kind.CENTRES,
                mean.rule().formula(),
                "rule",
                mean.rule().name(),
                "n",
                String.valueOf(mean.cases()),
                "centres",
                String.valueOf(mean.centreCount()),
                "mean",
                String.valueOf(mean.estimate().mean()),
                "se",
                String.valueOf(mean.estimate().se()),
                "df",
                String.valueOf(mean.estimate().df()));
    }

    private static Step summarised(Moments moments, SampleUnit of) {
        return summarised(
                "mean and SD (n - 1)", moments.n(), of, String.valueOf(moments.mean()), String.valueOf(moments.sd()));
    }

    private static Step summarised(String formula, int n, SampleUnit of, String mean, String sd) {
        return Step.of(
                Step.Kind.SUMMARISED,
                formula,
                "n",
                String.valueOf(n),
                "level",
                n == 1 ? of.singular() : of.plural(),
                "mean",
                mean,
                "sd",
                sd);
    }

    /** How many of each level: runs or samples below the members, centres above them. */
    private Sizes sizes(List<LocalMember> some) {
        var counts = new EnumMap<SampleUnit, Integer>(SampleUnit.class);
        int rows = some.stream().mapToInt(LocalMember::rows).sum();
        // one row a case is a case, not a sample
        if (level.below() == SampleUnit.RUNS || rows != some.size()) {
            counts.put(level.below(), rows);
        }
        counts.put(level, some.size());
        int centres = (int) some.stream()
                .map(LocalMember::centre)
                .filter(c -> !c.isEmpty())
                .distinct()
                .count();
        if (centres > 0) {
            counts.put(SampleUnit.CENTRES, centres);
        }
        return Sizes.of(counts);
    }

    /** What was fixed, and the means of what varied, one vote per member. */
    private Map<String, Circumstance> conditions(List<LocalMember> some) {
        var found = new LinkedHashMap<>(fixed);
        for (int i = 0; i < varying.size(); i++) {
            var sum = new ExactSum();
            for (var member : some) {
                member.amount(i).ifPresent(sum);
            }
            if (sum.count() > 0) {
                found.put(varying.get(i).condition().id(), varying.get(i).of(sum.mean()));
            }
        }
        for (int i = 0; i < worded.size(); i++) {
            var words = new TreeSet<String>();
            for (var member : some) {
                words.add(member.word(i));
            }
            words.remove("");
            // a condition that varied in words is not one condition, and is left out
            if (words.size() == 1) {
                found.put(worded.get(i).id(), new Circumstance.Word(words.first()));
            }
        }
        return found;
    }
}
