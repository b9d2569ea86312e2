package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.metric.Aspect;
import comparand.metric.Definition;
import comparand.metric.Metric;
import comparand.metric.Nature;
import comparand.model.Comparand;
import comparand.model.SetAside;
import comparand.model.library.Arrangement;
import comparand.model.library.ColumnRole;
import comparand.model.library.DataFileRecord;
import comparand.model.library.PartRecord;
import comparand.model.library.Repeats;
import comparand.unit.Rounding;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/** One metric computed from one data file: rows to groups, groups to comparands. */
final class MetricOfFile {

    private final DataFile file;
    private final Metric metric;
    private final Located<String> asked;
    private final List<Diagnostic> findings;
    private final List<SetAside> setAside;
    private final Definition wanted;
    private final LocalComparands comparands;

    MetricOfFile(
            DataFile file, Metric metric, Located<String> asked, List<Diagnostic> findings, List<SetAside> setAside) {
        this.setAside = setAside;
        this.file = file;
        this.metric = metric;
        this.asked = asked;
        this.findings = findings;
        this.wanted = wanted(metric, file.mapping());
        this.comparands = new LocalComparands(file, metric);
    }

    /** The definition a study computes a metric by: the standard one, with what the file states. */
    private static Definition wanted(Metric metric, DataFileRecord mapping) {
        var wanted = metric.standardDefinition();
        for (var entry : mapping.definition().list()) {
            if (metric.aspect(entry.key().value()).isPresent()) {
                wanted = wanted.with(
                        entry.key().value(),
                        entry.value().list().stream().map(Located::value).toList());
            }
        }
        return wanted;
    }

    List<Comparand> comparands(List<RowFacts> rows) {
        if (!membersAreNamed()) {
            return List.of();
        }
        return metric.nature() == Nature.EVENT ? events(rows) : measured(rows);
    }

    /** The level that counts as independent must be named by a column, or nobody knows what n is. */
    private boolean membersAreNamed() {
        var role = switch (file.level()) {
            case UNITS -> ColumnRole.UNIT;
            case RUNS -> ColumnRole.RUN;
            case CASES, PATIENTS, SAMPLES -> ColumnRole.CASE;
        };
        if (file.columns().holds(role)) {
            return true;
        }
        var word = role.name().toLowerCase(Locale.ROOT);
        findings.add(Diagnostic.stop(
                "column-missing",
                file.mapping().file().span(),
                "no column of `%s` holds the %s".formatted(file.name(), word),
                "results are counted per " + file.level().singular() + "; without it n cannot be known",
                "add `{holds: %s}` to the column that names it".formatted(word)));
        return false;
    }

    private List<Comparand> measured(List<RowFacts> rows) {
        var way = way();
        if (way.isEmpty()) {
            return List.of();
        }
        var groups = new TreeMap<String, Group>();
        int lacking = 0;
        for (var row : rows) {
            var value = way.get().value().apply(row).filter(Double::isFinite);
            if (value.isPresent()) {
                groupOf(row, groups).add(file.member(row), new Group.Result(value.get(), row));
            } else {
                lacking++;
            }
        }
        note(lacking, rows.size());
        var plausibility = new Plausibility(file, metric);
        var found = new ArrayList<Comparand>();
        var sound = new ArrayList<Group>();
        for (var group : groups.values()) {
            if (group.hasRepeats() && file.mapping().repeats().value() == Repeats.REFUSE) {
                findings.add(repeated(group));
                continue;
            }
            var comparand = comparands.measured(
                    group, way.get().formula(), way.get().columns(), hasTwin(group, groups.values()));
            var impossible = plausibility.impossible(group);
            if (impossible.isPresent()) {
                findings.add(impossible.get());
                setAside.add(new SetAside(
                        comparand, SetAside.Reason.HELD, impossible.get().message()));
            } else {
                sound.add(group);
                found.add(comparand);
            }
        }
        plausibility.unusual(sound).ifPresent(findings::add);
        return found;
    }

    /**
     * How a row gives the metric: the column itself, or a formula.
     *
     * @param columns the headings of the columns it takes part in
     */
    private record Way(Function<RowFacts, Optional<Double>> value, String formula, List<String> columns) {}

    private Optional<Way> way() {
        var column = file.columns().quantities().get(metric.id());
        if (column != null) {
            return Optional.of(new Way(
                    row -> Optional.ofNullable(row.numbers().get(metric.id())).map(m -> m.in(metric.unit())),
                    "",
                    List.of(column)));
        }
        var inputs = new GivenInputs(file);
        return inputs.plan(metric, wanted, asked, findings)
                .map(plan -> new Way(
                        row -> plan.value(input -> inputs.value(input, row)),
                        plan.formulas(),
                        plan.given().stream()
                                .flatMap(id -> Optional.ofNullable(
                                        file.columns().quantities().get(id))
                                        .stream())
                                .sorted()
                                .toList()));
    }

    /** Whether another group of the device has the same steps: then they differ by their definition. */
    private static boolean hasTwin(Group group, Collection<Group> groups) {
        return groups.stream()
                .anyMatch(g -> !g.equals(group)
                        && g.device().equals(group.device())
                        && g.steps().equals(group.steps()));
    }

    private Group groupOf(RowFacts row, SortedMap<String, Group> groups) {
        var steps = new TreeMap<String, String>();
        for (var by : file.mapping().groupedBy()) {
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
        return file.library().device(device).stream()
                .flatMap(d -> d.parts().stream())
                .filter(p -> p.arrangement().value() == Arrangement.INTEGRAL)
                .map(PartRecord::part)
                .map(Located::value)
                .filter(aspect.words()::contains)
                .toList();
    }

    /** Events are counted per device, and over all devices. */
    private List<Comparand> events(List<RowFacts> rows) {
        var groups = new TreeMap<String, Group>();
        int lacking = 0;
        for (var row : rows) {
            var event = row.events().get(metric.id());
            if (event == null) {
                lacking++;
                continue;
            }
            for (var device : List.of(row.device(), Comparand.ALL_DEVICES)) {
                groups.computeIfAbsent(device, d -> Group.empty(d, new TreeMap<>(), wanted))
                        .add(row.device() + "/" + file.member(row), new Group.Result(event ? 1 : 0, row));
            }
        }
        note(lacking, rows.size());
        return groups.values().stream()
                .map(group -> comparands.counted(group, happened(group)))
                .toList();
    }

    /** A member with several rows had the event if any of them says so. */
    private static int happened(Group group) {
        return (int) group.byMember().values().stream()
                .filter(results -> results.stream().anyMatch(r -> r.value() > 0))
                .count();
    }

    private void note(int lacking, int of) {
        if (lacking > 0) {
            findings.add(Diagnostic.note(
                    "rows-without-value",
                    asked.span(),
                    "`%s` could not be computed for %d of %d rows of `%s`: a cell is empty or marked missing"
                            .formatted(metric.id(), lacking, of, file.name()),
                    "fewer results than rows take part",
                    "nothing to mend if the values were never taken"));
        }
    }

    private Diagnostic repeated(Group group) {
        return Diagnostic.stop(
                "repeats-not-declared",
                file.mapping().repeats().span(),
                "%s was tested more than once at one step (%s)"
                        .formatted(
                                String.join(", ", group.repeatedMembers()),
                                String.join(", ", group.steps().values())),
                "counted as separate results, repeats make the interval too narrow",
                "write `repeats: average` to use the mean of each unit's repeats, or list rows under `dropped:` with a reason");
    }
}
