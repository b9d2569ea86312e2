package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.metric.Definition;
import comparand.metric.Metric;
import comparand.metric.Nature;
import comparand.model.Comparand;
import comparand.model.Library;
import comparand.model.LocalSeries;
import comparand.model.RowLog.Count;
import comparand.model.RowLog.FileLog;
import comparand.model.RowLog.LabelUse;
import comparand.model.SetAside;
import comparand.model.library.DataFileRecord;
import comparand.model.library.StudyRecord;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** One study, from its raw files to its results: files that describe first, then every row once, handed to each metric. */
final class StudyRun {

    private final Library library;
    private final StudyRecord study;
    private final Map<String, List<Definition>> published;
    private final int smallestGroup;
    private final List<Diagnostic> findings;
    private final Described described = new Described();
    private final Map<String, MetricOfStudy> metrics = new LinkedHashMap<>();
    private final Map<String, EventsOfStudy> events = new LinkedHashMap<>();
    private final MemberCounts counts;
    private final LabelledLimits limits;
    private final MembersOfStudy members = new MembersOfStudy();
    private final List<FileLog> logs = new ArrayList<>();
    private final List<Comparand> comparands = new ArrayList<>();
    private final List<LocalSeries> series = new ArrayList<>();
    private final List<SetAside> setAside = new ArrayList<>();

    /**
     * A run over one study.
     *
     * @param published the definitions that published values of a metric follow, by metric; results are computed by these
     *     too, where their formula can
     * @param smallestGroup the fewest patients that are shown as a group of their own
     */
    StudyRun(
            Library library,
            StudyRecord study,
            Map<String, List<Definition>> published,
            int smallestGroup,
            List<Diagnostic> findings) {
        this.library = library;
        this.study = study;
        this.published = published;
        this.smallestGroup = smallestGroup;
        this.findings = findings;
        this.counts = new MemberCounts(study);
        this.limits = new LabelledLimits(library, study);
    }

    void run() {
        int before = findings.size();
        var files = new StudyFiles(library, study, described, findings).open();
        if (findings.subList(before, findings.size()).stream().anyMatch(Diagnostic::stops)) {
            return;
        }
        files.stream().filter(f -> f.mapping().describes().isPresent()).forEach(this::describe);
        findings.addAll(described.findings());
        files.forEach(this::ask);
        files.stream().filter(this::isRead).forEach(this::read);
        if (findings.subList(before, findings.size()).stream().anyMatch(Diagnostic::stops)) {
            return;
        }
        metrics.values().forEach(this::finish);
        events.values().forEach(e -> comparands.addAll(e.finish()));
        findings.addAll(limits.findings());
        findings.addAll(members.findings());
    }

    List<Comparand> comparands() {
        return comparands;
    }

    List<LocalSeries> series() {
        return series;
    }

    List<SetAside> setAside() {
        return setAside;
    }

    List<FileLog> logs() {
        return logs;
    }

    List<Count> counts() {
        return counts.counts();
    }

    List<LabelUse> labelUses() {
        return limits.uses();
    }

    /** A file with results is read a second time for them, and logged then. */
    private boolean isRead(DataFile file) {
        return file.mapping().describes().isEmpty() || !file.mapping().gives().isEmpty();
    }

    private void describe(DataFile file) {
        var level = file.mapping().describes().orElseThrow().value();
        var log = new FileLogDraft(study.id(), file.path());
        var quality = new QualityOfRows(file, metrics.values());
        var found = new FileRows(file, described, log).forEach(row -> {
            var said = quality.look(row, row);
            return () -> {
                var admitted = quality.admit(row, said, log);
                admitted.held()
                        .ifPresentOrElse(reason -> described.hold(level, row, reason), () -> log.kept(row.rows()));
                described.add(level, file, row);
            };
        });
        if (!isRead(file)) {
            findings.addAll(found);
            findings.addAll(quality.findings(log));
            logs.add(log.log());
        }
    }

    /** Which metrics a file gives, by its own definition and by those that published values follow. */
    private void ask(DataFile file) {
        for (var wanted : file.mapping().gives()) {
            metric(wanted).ifPresent(metric -> {
                if (metric.nature() == Nature.EVENT) {
                    events.computeIfAbsent(metric.id(), id -> new EventsOfStudy(metric, findings))
                            .file(file, wanted);
                    return;
                }
                var own = definition(metric, file.mapping());
                metrics.computeIfAbsent(metric.id(), id -> new MetricOfStudy(metric, false, findings))
                        .file(file, wanted, own, own);
                for (var other : published.getOrDefault(metric.id(), List.of())) {
                    Recomputation.definition(metric, file, own, other)
                            .ifPresent(again -> metrics.computeIfAbsent(
                                            metric.id() + "|" + again, id -> new MetricOfStudy(metric, true, findings))
                                    .file(file, wanted, again, own));
                }
            });
        }
    }

    private Optional<Metric> metric(Located<String> wanted) {
        var metric = library.catalogue().find(wanted.value());
        if (metric.isEmpty()) {
            findings.add(Diagnostic.stop(
                    "metric-unknown",
                    wanted.span(),
                    "`%s` is not a metric known here".formatted(wanted.value()),
                    "nothing could be computed under that name",
                    Suggest.instruction(wanted.value(), library.catalogue().ids())));
        } else if (metric.get().nature() == Nature.STATED) {
            findings.add(Diagnostic.stop(
                    "metric-is-stated",
                    wanted.span(),
                    "`%s` is stated by label, not measured in a study".formatted(wanted.value()),
                    "a nominal figure has no spread over units",
                    "take it out of `gives:`; record it as a value of the instructions for use"));
            return Optional.empty();
        }
        return metric;
    }

    /** The definition a file's results follow: the metric's standard, with what the file states. */
    private static Definition definition(Metric metric, DataFileRecord mapping) {
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

    private void read(DataFile file) {
        var log = new FileLogDraft(study.id(), file.path());
        var devices = new DevicesOfRows(file, described);
        var quality = new QualityOfRows(file, metrics.values());
        int before = findings.size();
        findings.addAll(new FileRows(file, described, log).forEach(row -> look(file, row, log, devices, quality)));
        findings.addAll(quality.findings(log));
        findings.addAll(devices.findings());
        boolean stopped = findings.subList(before, findings.size()).stream().anyMatch(Diagnostic::stops);
        var done = log.log();
        logs.add(done);
        if (done.kept() == 0 && !stopped) {
            findings.add(Diagnostic.note(
                    "data-without-rows",
                    file.rows().heading(0),
                    "no row of `%s` is used".formatted(file.name()),
                    "the study has no result from this file",
                    "add the rows, or take the file out of `files:`"));
        }
    }

    /** Joins a row to what describes it and looks at it; returns what is to be done about it. */
    private Runnable look(DataFile file, RowFacts row, FileLogDraft log, DevicesOfRows devices, QualityOfRows quality) {
        var leftOut = described.whyLeftOut(row);
        if (leftOut.isPresent()) {
            return () -> log.dropped(row.rows(), row.line(), "member-left-out", leftOut.get());
        }
        var known = devices.known(row);
        if (known.isEmpty()) {
            return () -> {};
        }
        if (described.otherDevice(row).isPresent()) {
            return () -> log.held(
                    row.rows(),
                    row.line(),
                    "device-differs",
                    "this row names another device than the file that describes its case or unit");
        }
        var joined = known.get();
        var said = quality.look(row, joined);
        var memberHeld = described.whyHeld(joined);
        return () -> {
            members.accept(file, joined);
            var admitted = quality.admit(row, said, log);
            if (!admitted.isHeld() && memberHeld.isEmpty()) {
                takesPart(file, joined, admitted, log, quality);
            } else {
                keepOut(file, row, admitted, memberHeld, log);
            }
        };
    }

    private void keepOut(
            DataFile file, RowFacts row, Admitted admitted, Optional<String> memberHeld, FileLogDraft log) {
        if (!admitted.isHeld()) {
            log.held(row.rows(), row.line(), "member-held", memberHeld.orElseThrow());
        }
        metrics.values().forEach(m -> m.keepFrom(file));
    }

    private void takesPart(DataFile file, RowFacts row, Admitted admitted, FileLogDraft log, QualityOfRows quality) {
        log.kept(row.rows());
        var step = file.step(row);
        counts.accept(file, row, step);
        limits.accept(file, row);
        var lacking = new TreeSet<String>();
        for (var metric : metrics.values()) {
            if (admitted.excludes(metric, file)) {
                metric.keepFrom(file);
            } else if (!metric.accept(file, row, step)) {
                lacking.add(metric.id());
            }
        }
        events.values().forEach(e -> e.accept(file, row));
        quality.lacks(row, lacking, log);
    }

    private void finish(MetricOfStudy metric) {
        var sound = new ArrayList<GroupDraft>();
        for (var draft : metric.finish()) {
            var impossible = metric.impossible(draft.group());
            var whole = draft.series().map(LocalSeries::whole).or(() -> new GroupEstimate(draft).comparand());
            if (impossible.isPresent()) {
                if (!metric.isRecomputed()) {
                    findings.add(impossible.get());
                    whole.ifPresent(c -> setAside.add(new SetAside(
                            c, SetAside.Reason.HELD, impossible.get().message())));
                }
                continue;
            }
            sound.add(draft.group());
            draft.series().ifPresent(series::add);
            whole.ifPresent(comparands::add);
            if (!metric.isRecomputed()) {
                draft.series().ifPresent(s -> comparands.addAll(CentreParts.of(s, smallestGroup, findings)));
            }
        }
        if (!metric.isRecomputed()) {
            metric.noteUnusual(sound);
        }
    }
}
