package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.metric.Aspect;
import comparand.metric.Definition;
import comparand.metric.Gathering;
import comparand.metric.Metric;
import comparand.model.library.Arrangement;
import comparand.model.library.ColumnRole;
import comparand.model.library.PartRecord;
import comparand.model.library.Repeats;
import comparand.unit.Rounding;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One metric, by one definition, from all files of a study that give it: rows to members, members to groups. Rows are
 * handed over one by one and not kept.
 */
final class MetricOfStudy {

    private final Metric metric;
    private final Map<DataFile, FileShare> shares = new LinkedHashMap<>();
    private final SortedMap<String, GroupDraft> groups = new TreeMap<>();
    private final List<Diagnostic> findings;
    private final boolean isRecomputed;
    private final Map<DataFile, Plausibility> plausibilities = new LinkedHashMap<>();
    private Optional<ConditionFrame> frame = Optional.empty();

    /** What one file has to do with the metric. */
    private static final class FileShare {
        private final Located<String> asked;
        private final Way way;
        private final Definition usual;
        private int rows;
        private int lacking;

        FileShare(Located<String> asked, Way way, Definition usual) {
            this.asked = asked;
            this.way = way;
            this.usual = usual;
        }
    }

    /**
     * Nothing read yet.
     *
     * @param isRecomputed whether it is the metric once more, by the definition of a published value
     */
    MetricOfStudy(Metric metric, boolean isRecomputed, List<Diagnostic> findings) {
        this.metric = metric;
        this.isRecomputed = isRecomputed;
        this.findings = findings;
    }

    /**
     * A file that gives the metric, if its members are named and there is a way; else with a finding.
     *
     * @param usual the definition its own results follow
     */
    void file(DataFile file, Located<String> asked, Definition wanted, Definition usual) {
        if (!membersAreNamed(file)) {
            return;
        }
        way(file, asked, wanted).ifPresent(way -> shares.put(file, new FileShare(asked, way, usual)));
    }

    private Optional<Way> way(DataFile file, Located<String> asked, Definition wanted) {
        if (file.given().isInRows(metric.id())) {
            return isRecomputed ? Optional.empty() : Optional.of(Way.column(metric, file.heading(metric.id()), wanted));
        }
        var plan = isRecomputed
                ? file.given().plan(metric.id(), wanted)
                : file.given().plan(metric, wanted, asked, findings);
        return plan.map(p -> Way.formula(
                p,
                p.given().stream()
                        .filter(file.given()::isInRows)
                        .map(file::heading)
                        .distinct()
                        .sorted()
                        .toList()));
    }

    boolean isRecomputed() {
        return isRecomputed;
    }

    /** A row that takes part. */
    void accept(DataFile file, RowFacts row) {
        var share = shares.get(file);
        if (share == null) {
            return;
        }
        var conditions = conditions();
        share.rows++;
        var given = file.given().of(row);
        var gathered = share.way.gathered(row, given);
        if (gathered.isEmpty()) {
            share.lacking++;
            return;
        }
        int inputs = gathered.get().length;
        var numbers = Arrays.copyOf(gathered.get(), inputs + conditions.numbers());
        conditions.read(file, row, given, numbers, inputs);
        var group = groupOf(file, share, row);
        group.files().putIfAbsent(file.path(), file);
        group.member(file.member(row), row.centre(), numbers.length, conditions.words())
                .add(numbers, conditions.words(file, row), keepsPoints(share.way.gathering()));
        if (inputs == 1 && share.way.inputs().get(0).equals(metric.id())) {
            plausibilities
                    .computeIfAbsent(file, f -> new Plausibility(f, metric))
                    .look(group, gathered.get()[0], row.line());
        }
    }

    private ConditionFrame conditions() {
        if (frame.isEmpty()) {
            frame = Optional.of(new ConditionFrame(metric, List.copyOf(shares.keySet())));
        }
        return frame.get();
    }

    private static boolean keepsPoints(Gathering gathering) {
        return (gathering instanceof Gathering.Fit fit && fit.over() == Gathering.Over.MEMBER)
                || gathering instanceof Gathering.Crossing
                || gathering instanceof Gathering.Lowest;
    }

    private GroupDraft groupOf(DataFile file, FileShare share, RowFacts row) {
        var steps = new TreeMap<String, String>();
        for (var by : file.mapping().groupedBy()) {
            if (!runsAlong(share.way.gathering(), by.value())) {
                steps.put(by.value(), step(row, by.value()));
            }
        }
        var definition = definitionOf(file, share, row);
        var device = row.deviceId();
        return groups.computeIfAbsent(
                GroupDraft.key(device, steps, definition), k -> new GroupDraft(device, steps, definition));
    }

    private static String step(RowFacts row, String by) {
        var measured = row.numbers().get(by);
        return measured == null
                ? row.words().getOrDefault(by, "not recorded")
                : Rounding.halfUp(measured.value(), measured.decimals()) + " " + measured.unit();
    }

    /** A line or a curve runs along its x, which therefore sets no groups apart. */
    private static boolean runsAlong(Gathering gathering, String condition) {
        return along(gathering).filter(condition::equals).isPresent();
    }

    private static Optional<String> along(Gathering gathering) {
        if (gathering instanceof Gathering.Fit fit) {
            return Optional.of(fit.xInput());
        }
        if (gathering instanceof Gathering.Lowest lowest) {
            return along(lowest.crossings().get(0));
        }
        return gathering instanceof Gathering.Crossing crossing ? Optional.of(crossing.xInput()) : Optional.empty();
    }

    private Definition definitionOf(DataFile file, FileShare share, RowFacts row) {
        var definition = share.way.followed();
        for (var aspect : metric.definition()) {
            var ofRow = row.definition().get(aspect.id());
            if (ofRow.isPresent()) {
                definition = definition.with(aspect.id(), ofRow.get());
            } else if (aspect instanceof Aspect.Parts
                    && definition.get(aspect.id()).isEmpty()) {
                definition = definition.with(aspect.id(), integralParts(file, row.deviceId(), aspect));
            }
        }
        return definition;
    }

    /** What is built into a device was in the circuit, whoever ran the test. */
    private static List<String> integralParts(DataFile file, String device, Aspect aspect) {
        return file.library().device(device).stream()
                .flatMap(d -> d.parts().stream())
                .filter(p -> p.arrangement().value() == Arrangement.INTEGRAL)
                .map(PartRecord::part)
                .map(Located::value)
                .filter(aspect.words()::contains)
                .toList();
    }

    /** The level that counts as independent must be named by a column, or nobody knows what n is. */
    private boolean membersAreNamed(DataFile file) {
        var role = switch (file.level()) {
            case UNITS -> ColumnRole.UNIT;
            case RUNS -> ColumnRole.RUN;
            case CASES, PATIENTS, SAMPLES -> ColumnRole.CASE;
            case CENTRES -> ColumnRole.CENTRE;
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

    /** After the last row of the last file. */
    List<SeriesDraft> finish() {
        shares.forEach((file, share) -> {
            if (!isRecomputed) {
                noteLacking(file, share);
            }
        });
        var drafts = new ArrayList<SeriesDraft>();
        for (var group : groups.values()) {
            var refusing = group.files().values().stream()
                    .filter(f -> f.mapping().repeats().value() == Repeats.REFUSE)
                    .findFirst();
            if (refusing.isPresent() && !group.repeated().isEmpty()) {
                if (!isRecomputed) {
                    findings.add(repeated(refusing.get(), group));
                }
                continue;
            }
            var first = group.anyFile();
            var share = shares.get(first);
            if (share != null) {
                drafts.add(new SeriesDraft(metric, group, share.way, conditions(), hasTwin(group), share.usual));
            }
        }
        return drafts;
    }

    /** Results of a group that cannot be; empty if there are none. */
    Optional<Diagnostic> impossible(GroupDraft group) {
        return plausibilities.values().stream()
                .flatMap(p -> p.impossible(group).stream())
                .findFirst();
    }

    void noteUnusual(List<GroupDraft> sound) {
        plausibilities.values().forEach(p -> p.unusual(sound).ifPresent(findings::add));
    }

    /** Whether another group of the device has the same steps: then they differ by their definition. */
    private boolean hasTwin(GroupDraft group) {
        return groups.values().stream()
                .anyMatch(g -> g != group
                        && g.device().equals(group.device())
                        && g.steps().equals(group.steps()));
    }

    private void noteLacking(DataFile file, FileShare share) {
        if (share.lacking > 0) {
            findings.add(Diagnostic.note(
                    "rows-without-value",
                    share.asked.span(),
                    "`%s` could not be computed for %d of %d rows of `%s`: a cell is empty or marked missing"
                            .formatted(metric.id(), share.lacking, share.rows, file.name()),
                    "fewer results than rows take part",
                    "nothing to mend if the values were never taken"));
        }
    }

    private static Diagnostic repeated(DataFile file, GroupDraft group) {
        return Diagnostic.stop(
                "repeats-not-declared",
                file.mapping().repeats().span(),
                "%s was tested more than once at one step (%s)"
                        .formatted(
                                String.join(", ", group.repeated()),
                                String.join(", ", group.steps().values())),
                "counted as separate results, repeats make the interval too narrow",
                "write `repeats: average` to use the mean of each unit's repeats, or list rows under `dropped:` with a reason");
    }
}
