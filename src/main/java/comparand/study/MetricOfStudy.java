package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.metric.Definition;
import comparand.metric.Gathering;
import comparand.metric.Metric;
import comparand.metric.Role;
import comparand.model.library.ColumnRole;
import comparand.model.library.Repeats;
import comparand.model.library.SampleUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * One metric, by one definition, from all files of a study that give it: rows to members, members to groups. Rows are
 * handed over one by one and not kept.
 */
final class MetricOfStudy {

    /** The share of rows above which a result is marked. */
    private static final double MOST_EXCLUDED = 0.3;

    private final Metric metric;
    private final Map<DataFile, FileShare> shares = new LinkedHashMap<>();
    private final SortedMap<String, GroupDraft> groups = new TreeMap<>();
    private final List<Diagnostic> findings;
    private final boolean isRecomputed;
    private final Map<DataFile, Plausibility> plausibilities = new LinkedHashMap<>();
    private Optional<ConditionFrame> frame = Optional.empty();

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

    String id() {
        return metric.id();
    }

    boolean isAskedOf(DataFile file) {
        return shares.containsKey(file);
    }

    /** Whether a file's results follow a definition in every aspect of it; never, if it has none. */
    boolean follows(DataFile file, Definition definition) {
        var share = shares.get(file);
        return share != null
                && !definition.aspects().isEmpty()
                && definition.aspects().entrySet().stream()
                        .allMatch(e -> share.way()
                                .followed()
                                .get(e.getKey())
                                .filter(e.getValue()::equals)
                                .isPresent());
    }

    /** Whether the metric is computed from a quantity, or decided by it. */
    boolean needs(DataFile file, String quantity) {
        var share = shares.get(file);
        return share != null
                && (share.way().plan().filter(p -> p.given().contains(quantity)).isPresent()
                        || metric.condition(quantity)
                                .filter(use -> use.role() == Role.DECIDES)
                                .isPresent());
    }

    /** A row that takes part, but not here. */
    void keepFrom(DataFile file) {
        var share = shares.get(file);
        if (share != null) {
            share.kept();
        }
    }

    /**
     * A row that takes part; whether it has a value, or nobody asks it for one.
     *
     * @param step of the row, by {@link DataFile#step}
     */
    boolean accept(DataFile file, RowFacts row, List<Object> step) {
        var share = shares.get(file);
        if (share == null) {
            return true;
        }
        var conditions = conditions();
        share.seen();
        var given = file.given().of(row);
        var gathered = share.way().gathered(row, given);
        if (gathered.isEmpty()) {
            share.lacks();
            return false;
        }
        int inputs = gathered.get().length;
        var numbers = Arrays.copyOf(gathered.get(), inputs + conditions.numbers());
        conditions.read(file, row, given, numbers, inputs);
        var group = share.group(row, step, r -> groupOf(file, share, r));
        group.files().putIfAbsent(file.path(), file);
        var gathering = share.way().gathering();
        var member = group.member(file.member(row), numbers.length, conditions.words());
        // as long as a device has one unit, its runs are all there is to tell a spread from
        boolean runs = isRunOfUnit(gathering, file);
        if (runs && member.rows() == 0) {
            group.keepRunsOfOne();
        }
        boolean only = runs && group.hasOnlyOne();
        member.add(numbers, conditions.words(file, row), only || keepsPoints(gathering));
        if (inputs == 1 && share.way().inputs().get(0).equals(metric.id())) {
            plausibilities
                    .computeIfAbsent(file, f -> new Plausibility(f, metric))
                    .look(group, gathered.get()[0], row.line());
        }
        return true;
    }

    private ConditionFrame conditions() {
        if (frame.isEmpty()) {
            frame = Optional.of(new ConditionFrame(metric, List.copyOf(shares.keySet())));
        }
        return frame.get();
    }

    static boolean isRunOfUnit(Gathering gathering, DataFile file) {
        return gathering instanceof Gathering.EachRow && file.level() == SampleUnit.UNITS;
    }

    private static boolean keepsPoints(Gathering gathering) {
        return (gathering instanceof Gathering.Fit fit && fit.over() == Gathering.Over.MEMBER)
                || gathering instanceof Gathering.Crossing
                || gathering instanceof Gathering.Lowest;
    }

    private GroupDraft groupOf(DataFile file, FileShare share, RowFacts row) {
        var steps = new TreeMap<String, String>();
        for (var by : file.mapping().groupedBy()) {
            if (!runsAlong(share.way().gathering(), by.value())) {
                steps.put(by.value(), row.step(by.value()));
            }
        }
        var definition = RowDefinition.of(metric, share.way().followed(), file, row);
        var device = row.deviceId();
        return groups.computeIfAbsent(
                GroupDraft.key(device, steps, definition), k -> new GroupDraft(device, steps, definition));
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
        if (!isRecomputed) {
            shares.forEach((file, share) -> share.lacking(metric, file).ifPresent(findings::add));
            noteExcluded();
        }
        var drafts = new ArrayList<SeriesDraft>();
        var places = groups.values().stream().collect(Collectors.groupingBy(GroupDraft::place, Collectors.counting()));
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
                drafts.add(new SeriesDraft(
                        metric,
                        group,
                        share.way(),
                        conditions(),
                        places.getOrDefault(group.place(), 0L) > 1,
                        share.usual()));
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

    /** A metric that most rows were kept from says little of the rest; a third is much; trade usage. */
    private void noteExcluded() {
        int all = shares.values().stream().mapToInt(FileShare::all).sum();
        int excluded = shares.values().stream().mapToInt(FileShare::excluded).sum();
        if (excluded > MOST_EXCLUDED * all) {
            findings.add(Diagnostic.note(
                    "rows-mostly-excluded",
                    shares.values().iterator().next().asked().span(),
                    "`%s` is kept from %d of %d rows, more than 30 %%".formatted(metric.id(), excluded, all),
                    "what is left may not stand for the cases",
                    "look at what was found in these rows; every report says it beside the result"));
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
