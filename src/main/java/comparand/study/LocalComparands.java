package comparand.study;

import comparand.metric.Metric;
import comparand.model.Comparand;
import comparand.model.Label;
import comparand.model.Origin;
import comparand.model.Sizes;
import comparand.model.Step;
import comparand.model.Summary;
import comparand.model.library.SampleUnit;
import comparand.stat.Moments;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Makes a comparand of a group of rows: its summary, sizes, conditions, id and trail. */
final class LocalComparands {

    private final DataFile file;
    private final Metric metric;

    LocalComparands(DataFile file, Metric metric) {
        this.file = file;
        this.metric = metric;
    }

    /**
     * A measured metric: the mean and SD over the members, each with one number.
     *
     * @param columns the headings of the columns that took part
     * @param definedByName whether the definition must be named to tell the group from another of the device
     */
    Comparand measured(Group group, String formula, List<String> columns, boolean definedByName) {
        var each = group.eachMember();
        var trail = new ArrayList<Step>();
        trail.add(Step.of(
                Step.Kind.COMPUTED,
                formula,
                "file",
                file.path(),
                "rows",
                String.valueOf(group.rows()),
                "columns",
                String.join(", ", columns)));
        if (group.hasRepeats()) {
            trail.add(Step.of(
                    Step.Kind.REPEATS,
                    "",
                    "members",
                    String.join(", ", group.repeatedMembers()),
                    "level",
                    file.level().singular()));
        }
        var summary = summary(each, trail);
        var counts = new EnumMap<SampleUnit, Integer>(SampleUnit.class);
        counts.put(file.level(), each.size());
        counts.putIfAbsent(SampleUnit.RUNS, group.rows());
        return comparand(group, summary, trail, Sizes.of(counts), definedByName);
    }

    private Summary summary(List<Double> each, List<Step> trail) {
        if (each.size() == 1) {
            trail.add(summarised("", file.level().singular(), 1, String.valueOf(each.get(0)), "none"));
            return new Summary.Point(each.get(0), 0, Summary.PointKind.SINGLE);
        }
        var moments = Moments.of(each.stream().mapToDouble(d -> d).toArray());
        trail.add(summarised(
                "mean and SD (n - 1)",
                file.level().plural(),
                each.size(),
                String.valueOf(moments.mean()),
                String.valueOf(moments.sd())));
        return new Summary.Sampled(moments, Label.REPORTED, 0, each);
    }

    private static Step summarised(String formula, String level, int n, String mean, String sd) {
        return Step.of(Step.Kind.SUMMARISED, formula, "n", String.valueOf(n), "level", level, "mean", mean, "sd", sd);
    }

    /** An event: in how many of the members it happened. */
    Comparand counted(Group group, int happened) {
        int of = group.byMember().size();
        var trail = List.of(Step.of(
                Step.Kind.COUNTED,
                "",
                "file",
                file.path(),
                "rows",
                String.valueOf(group.rows()),
                "events",
                String.valueOf(happened),
                "of",
                String.valueOf(of),
                "level",
                file.level().plural()));
        return comparand(group, new Summary.Events(happened, of), trail, Sizes.of(Map.of(file.level(), of)), false);
    }

    private Comparand comparand(Group group, Summary summary, List<Step> trail, Sizes sizes, boolean definedByName) {
        var label = label(group, definedByName);
        var device = group.device().equals(Comparand.ALL_DEVICES) ? "all-devices" : group.device();
        var id = String.join("/", file.study().id(), metric.id(), device) + (label.isEmpty() ? "" : "/" + label);
        return new Comparand(
                id,
                new Origin.Local(file.study(), file.path(), label),
                group.device(),
                metric,
                group.definition(),
                summary,
                sizes,
                Circumstances.of(group, file.library().catalogue().conditions(), file.fixed()),
                trail);
    }

    /** What sets a group apart: its steps, and its definition where another group of the device differs by it. */
    private String label(Group group, boolean definedByName) {
        var defined = file.columns().definedByRow().stream()
                .filter(a -> definedByName)
                .flatMap(a -> metric.aspect(a).stream())
                .flatMap(a -> group.definition().get(a.id()).map(a::text).stream());
        return String.join(
                ", ", Stream.concat(defined, group.steps().values().stream()).toList());
    }
}
