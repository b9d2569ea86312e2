package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.metric.Aspect;
import comparand.metric.Definition;
import comparand.metric.Input;
import comparand.metric.Metric;
import comparand.metric.Nature;
import comparand.model.Circumstance;
import comparand.model.Comparand;
import comparand.model.Label;
import comparand.model.Library;
import comparand.model.Origin;
import comparand.model.Sizes;
import comparand.model.Step;
import comparand.model.Summary;
import comparand.model.library.Arrangement;
import comparand.model.library.ColumnRole;
import comparand.model.library.ConditionText;
import comparand.model.library.DataFileRecord;
import comparand.model.library.Entries;
import comparand.model.library.PartRecord;
import comparand.model.library.Repeats;
import comparand.model.library.SampleUnit;
import comparand.model.library.StudyRecord;
import comparand.stat.Moments;
import comparand.unit.Rounding;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** One metric computed from one data file: rows to groups, groups to comparands. */
final class MetricOfFile {

    private final Library library;
    private final StudyRecord study;
    private final DataFileRecord mapping;
    private final String file;
    private final ColumnPlan columns;
    private final Entries<Located<ConditionText>> fixed;
    private final Metric metric;
    private final Located<String> asked;
    private final List<Diagnostic> findings;
    private final Definition wanted;
    private final SampleUnit level;

    MetricOfFile(
            Library library,
            StudyRecord study,
            DataFileRecord mapping,
            String file,
            ColumnPlan columns,
            Entries<Located<ConditionText>> fixed,
            Metric metric,
            Located<String> asked,
            List<Diagnostic> findings) {
        this.library = library;
        this.study = study;
        this.mapping = mapping;
        this.file = file;
        this.columns = columns;
        this.fixed = fixed;
        this.metric = metric;
        this.asked = asked;
        this.findings = findings;
        this.wanted = LocalStudies.wanted(metric, mapping);
        this.level = study.unitOfAnalysis().value();
    }

    List<Comparand> comparands(List<RowFacts> rows) {
        if (!membersAreNamed()) {
            return List.of();
        }
        if (metric.nature() == Nature.EVENT) {
            return events(rows);
        }
        var direct = columns.quantities().containsKey(metric.id());
        var plan = direct ? Optional.<Plan>empty() : plan();
        if (!direct && plan.isEmpty()) {
            return List.of();
        }
        var groups = new TreeMap<String, Group>();
        int lacking = 0;
        for (var row : rows) {
            var value = plan.map(p -> p.value(input -> given(input, row)))
                    .orElseGet(() ->
                            Optional.ofNullable(row.numbers().get(metric.id())).map(m -> m.in(metric.unit())));
            if (value.isPresent() && Double.isFinite(value.get())) {
                groupOf(row, groups).add(member(row), new Group.Result(value.get(), row));
            } else {
                lacking++;
            }
        }
        if (lacking > 0) {
            missing(lacking, rows.size());
        }
        var formula = plan.map(Plan::formulas).orElse("");
        var found = new ArrayList<Comparand>();
        groups.values()
                .forEach(group -> measured(group, formula, twins(group, groups.values()) > 1)
                        .ifPresent(found::add));
        return found;
    }

    /** How many groups of a device share its steps: more than one if they differ by their definition. */
    private static long twins(Group group, Collection<Group> groups) {
        return groups.stream()
                .filter(g -> g.device().equals(group.device()) && g.steps().equals(group.steps()))
                .count();
    }

    /** The level that counts as independent must be named by a column, or nobody knows what n is. */
    private boolean membersAreNamed() {
        var role = switch (level) {
            case UNITS -> ColumnRole.UNIT;
            case RUNS -> ColumnRole.RUN;
            case CASES, PATIENTS, SAMPLES -> ColumnRole.CASE;
        };
        if (columns.holds(role)) {
            return true;
        }
        findings.add(Diagnostic.stop(
                "column-missing",
                mapping.file().span(),
                "no column of `%s` holds the %s"
                        .formatted(mapping.file().value(), role.name().toLowerCase(Locale.ROOT)),
                "results are counted per " + level.singular() + "; without it n cannot be known",
                "add `{holds: %s}` to the column that names it"
                        .formatted(role.name().toLowerCase(Locale.ROOT))));
        return false;
    }

    private Optional<Plan> plan() {
        var given = new HashSet<>(columns.quantities().keySet());
        fixed.stream()
                .filter(e -> e.value().value().asNumber().isPresent())
                .forEach(e -> given.add(e.key().value()));
        library.values()
                .filter(v -> nominal(v.value().metric().value()).isPresent())
                .forEach(v -> given.add(v.value().metric().value()));
        var derivations = new Derivations(library.catalogue(), given);
        var plan = derivations.plan(metric, wanted);
        if (plan.isEmpty()) {
            var lacking = derivations.missing(metric, wanted);
            var names = String.join(
                    ", ",
                    lacking.stream()
                            .map(i -> "`" + i.id() + "` (" + i.meaning() + ")")
                            .toList());
            findings.add(Diagnostic.stop(
                    "input-missing",
                    asked.span(),
                    lacking.isEmpty()
                            ? "`%s` has no formula, and no column gives it".formatted(metric.id())
                            : "`%s` cannot be computed: nothing gives %s".formatted(metric.id(), names),
                    "a metric is computed from what was measured, or not at all",
                    lacking.isEmpty()
                            ? "map a column to it with `{metric: %s, unit: ...}`, or take it out of `gives:`"
                                    .formatted(metric.id())
                            : "map a column with `{input: %s, unit: %s}`, state it under `conditions:`, or take `%s` out of `gives:`"
                                    .formatted(
                                            lacking.get(0).id(),
                                            lacking.get(0).unit().code(),
                                            metric.id())));
        }
        return plan;
    }

    private Optional<Metric> nominal(String id) {
        return library.catalogue().find(id).filter(m -> m.nature() == Nature.STATED);
    }

    /** A given number in the unit the formula wants: from the row, from what is fixed, or from the device's label. */
    private Optional<Double> given(Input input, RowFacts row) {
        var measured = row.numbers().get(input.id());
        if (measured != null) {
            return Optional.of(measured.in(input.unit()));
        }
        var stated = fixed.get(input.id()).flatMap(c -> c.value().asNumber()).map(q -> q.in(input.unit()));
        return stated.or(() -> nominalFigure(input, row.device()));
    }

    private Optional<Double> nominalFigure(Input input, String device) {
        return library.device(device)
                .flatMap(d -> library.source(d.instructions().value()))
                .flatMap(s -> s.values().stream()
                        .filter(v -> v.device().value().equals(device)
                                && v.metric().value().equals(input.id()))
                        .flatMap(v -> v.value().stream())
                        .findFirst())
                .map(v -> v.value().in(input.unit()));
    }

    private String member(RowFacts row) {
        return row.members().getOrDefault(level, "line " + row.line());
    }

    private Group groupOf(RowFacts row, SortedMap<String, Group> groups) {
        var steps = new TreeMap<String, String>();
        for (var by : mapping.groupedBy()) {
            var measured = row.numbers().get(by.value());
            var text = measured == null
                    ? row.words().getOrDefault(by.value(), "not recorded")
                    : Rounding.halfUp(measured.value(), measured.decimals()) + " " + measured.unit();
            steps.put(by.value(), text);
        }
        var definition = definitionOf(row);
        return groups.computeIfAbsent(
                Group.key(row.device(), steps, definition), k -> Group.empty(row.device(), steps, definition));
    }

    private Definition definitionOf(RowFacts row) {
        var definition = wanted;
        for (var aspect : metric.definition()) {
            var ofRow = row.definition().get(aspect.id());
            if (ofRow.isPresent()) {
                definition = definition.with(aspect.id(), ofRow.get());
            } else if (aspect instanceof Aspect.Parts
                    && definition.get(aspect.id()).isEmpty()) {
                definition = definition.with(aspect.id(), integralParts(row.device(), aspect));
            }
        }
        return definition;
    }

    /** What is built into a device was in the circuit, whoever ran the test. */
    private List<String> integralParts(String device, Aspect aspect) {
        return library.device(device).stream()
                .flatMap(d -> d.parts().stream())
                .filter(p -> p.arrangement().value() == Arrangement.INTEGRAL)
                .map(PartRecord::part)
                .map(Located::value)
                .filter(aspect.words()::contains)
                .toList();
    }

    private Optional<Comparand> measured(Group group, String formula, boolean definedByName) {
        if (group.hasRepeats() && mapping.repeats().value() == Repeats.REFUSE) {
            repeated(group);
            return Optional.empty();
        }
        var each = group.eachMember();
        var trail = new ArrayList<Step>();
        trail.add(Step.of(
                Step.Kind.COMPUTED,
                formula,
                "file",
                file,
                "rows",
                String.valueOf(group.rows()),
                "columns",
                String.join(
                        ", ", columns.quantities().values().stream().sorted().toList())));
        if (group.hasRepeats()) {
            trail.add(Step.of(Step.Kind.REPEATS, "", "members", repeatedMembers(group), "level", level.singular()));
        }
        Summary summary;
        if (each.size() >= 2) {
            var moments = Moments.of(each.stream().mapToDouble(d -> d).toArray());
            summary = new Summary.Sampled(moments, Label.REPORTED, 0, each);
            trail.add(Step.of(
                    Step.Kind.SUMMARISED,
                    "mean and SD (n - 1)",
                    "n",
                    String.valueOf(each.size()),
                    "level",
                    level.plural(),
                    "mean",
                    String.valueOf(moments.mean()),
                    "sd",
                    String.valueOf(moments.sd())));
        } else {
            summary = new Summary.Point(each.get(0), 0, Summary.PointKind.SINGLE);
            trail.add(Step.of(
                    Step.Kind.SUMMARISED,
                    "",
                    "n",
                    "1",
                    "level",
                    level.singular(),
                    "mean",
                    String.valueOf(each.get(0)),
                    "sd",
                    "none"));
        }
        return Optional.of(comparand(group, summary, trail, sizes(group), definedByName));
    }

    private Sizes sizes(Group group) {
        var counts = new EnumMap<SampleUnit, Integer>(SampleUnit.class);
        counts.put(level, group.byMember().size());
        counts.putIfAbsent(SampleUnit.RUNS, group.rows());
        return Sizes.of(counts);
    }

    private Comparand comparand(Group group, Summary summary, List<Step> trail, Sizes sizes, boolean definedByName) {
        var label = label(group, definedByName);
        var device = group.device().equals(Comparand.ALL_DEVICES) ? "all-devices" : group.device();
        var id = String.join("/", study.id(), metric.id(), device) + (label.isEmpty() ? "" : "/" + label);
        return new Comparand(
                id,
                new Origin.Local(study, file, label),
                group.device(),
                metric,
                group.definition(),
                summary,
                sizes,
                conditions(group),
                trail);
    }

    /** What sets a group apart: its steps, and its definition where another group of the device differs by it. */
    private String label(Group group, boolean definedByName) {
        var defined = columns.definedByRow().stream()
                .filter(a -> definedByName)
                .flatMap(a -> metric.aspect(a).stream())
                .flatMap(a -> group.definition().get(a.id()).map(a::text).stream());
        return String.join(
                ", ", Stream.concat(defined, group.steps().values().stream()).toList());
    }

    private Map<String, Circumstance> conditions(Group group) {
        return Circumstances.of(group, library.catalogue().conditions(), fixed);
    }

    private List<Comparand> events(List<RowFacts> rows) {
        var perDevice = new TreeMap<String, Map<String, Boolean>>();
        var rowsOf = new HashMap<String, List<RowFacts>>();
        int lacking = 0;
        for (var row : rows) {
            var event = row.events().get(metric.id());
            if (event == null) {
                lacking++;
                continue;
            }
            for (var device : List.of(row.device(), Comparand.ALL_DEVICES)) {
                perDevice
                        .computeIfAbsent(device, d -> new TreeMap<>())
                        .merge(row.device() + "/" + member(row), event, Boolean::logicalOr);
                rowsOf.computeIfAbsent(device, d -> new ArrayList<>()).add(row);
            }
        }
        if (lacking > 0) {
            missing(lacking, rows.size());
        }
        var found = new ArrayList<Comparand>();
        perDevice.forEach((device, members) -> {
            int x = (int) members.values().stream().filter(e -> e).count();
            var group = Group.empty(device, new TreeMap<>(), wanted);
            rowsOf.getOrDefault(device, List.of())
                    .forEach(r -> group.add(r.device() + "/" + member(r), new Group.Result(0, r)));
            var trail = List.of(Step.of(
                    Step.Kind.COUNTED,
                    "",
                    "file",
                    file,
                    "rows",
                    String.valueOf(group.rows()),
                    "events",
                    String.valueOf(x),
                    "of",
                    String.valueOf(members.size()),
                    "level",
                    level.plural()));
            found.add(comparand(
                    group,
                    new Summary.Events(x, members.size()),
                    trail,
                    Sizes.of(Map.of(level, members.size())),
                    false));
        });
        return found;
    }

    private void missing(int lacking, int of) {
        findings.add(Diagnostic.note(
                "rows-without-value",
                asked.span(),
                "`%s` could not be computed for %d of %d rows of `%s`: a cell is empty or marked missing"
                        .formatted(metric.id(), lacking, of, mapping.file().value()),
                "n is smaller than the number of rows",
                "nothing to mend if the values were never taken"));
    }

    private void repeated(Group group) {
        findings.add(
                Diagnostic.stop(
                        "repeats-not-declared",
                        mapping.repeats().span(),
                        "%s was tested more than once at one step (%s)"
                                .formatted(
                                        repeatedMembers(group),
                                        String.join(", ", group.steps().values())),
                        "counted as separate results, repeats make the interval too narrow",
                        "write `repeats: average` to use the mean of each unit's repeats, or list rows under `dropped:` with a reason"));
    }

    private static String repeatedMembers(Group group) {
        return String.join(
                ", ",
                group.byMember().entrySet().stream()
                        .filter(e -> e.getValue().size() > 1)
                        .map(Map.Entry::getKey)
                        .toList());
    }
}
