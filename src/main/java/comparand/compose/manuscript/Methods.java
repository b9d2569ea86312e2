package comparand.compose.manuscript;

import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.diag.Located;
import comparand.document.Block;
import comparand.document.result.ResultSet;
import comparand.document.result.ScreeningResult;
import comparand.model.Comparand;
import comparand.model.RowLog;
import comparand.model.Step;
import comparand.model.library.ManuscriptRecord;
import comparand.model.library.SourceRecord;
import comparand.model.library.StudyKind;
import comparand.model.library.StudyRecord;
import comparand.model.library.ToleranceRecord;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** How it was done: only what is true of this run. */
final class Methods {

    private final Writing writing;
    private final Run run;
    private final Map<String, Integer> counts;
    private final Optional<ScreeningResult> screening;
    private final Optional<ManuscriptRecord> own;

    Methods(Writing writing, ResultSet results) {
        this.writing = writing;
        this.run = writing.run();
        this.counts = results.counts();
        this.screening = results.screening();
        this.own = run.dossier().manuscript();
    }

    List<Block> blocks(List<String> statistics) {
        var blocks = new ArrayList<Block>();
        add(blocks, "met_design", design());
        add(blocks, "met_published", published());
        for (var study : studies()) {
            add(blocks, "met_study_" + study.id(), study(study));
        }
        add(blocks, "met_conversions", conversions());
        add(blocks, "met_comparability", comparability());
        add(blocks, "met_statistics", statistics);
        return blocks;
    }

    private void add(List<Block> blocks, String name, List<String> sentences) {
        if (!sentences.isEmpty()) {
            blocks.add(writing.prose(name, sentences));
        }
    }

    private List<String> design() {
        var said = new ArrayList<String>();
        var devices = run.dossier().devices().stream()
                .map(d -> run.names().device(d.value()))
                .toList();
        said.add(say(
                "ms.say.design",
                "devices",
                String.join(", ", devices),
                "present",
                run.names().device(run.dossier().presentDevice().value())));
        said.add(say(
                "ms.say.question",
                "question",
                run.dossier().question().value(),
                "decision",
                run.dossier().decision().value().replaceAll("\\.$", "")));
        given(said, own.flatMap(ManuscriptRecord::registration));
        given(said, own.flatMap(ManuscriptRecord::ethics));
        return said;
    }

    private static void given(List<String> said, Optional<Located<String>> sentence) {
        sentence.ifPresent(s -> said.add(Writing.sentence(s.value())));
    }

    private List<String> published() {
        var said = new ArrayList<String>();
        screening.ifPresent(s -> said.addAll(new Searches(writing, s).sentences()));
        var sources = run.names().sources().stream().map(SourceRecord::id).toList();
        if (sources.isEmpty()) {
            return said;
        }
        said.add(say(
                "ms.say.sources",
                "n",
                count("sources"),
                "refs",
                writing.cite(sources),
                "table",
                Numbering.SOURCES.named(writing),
                "aside",
                Numbering.ASIDE.named(writing)));
        said.add(
                count("values-read-twice").equals("0")
                        ? say("ms.say.read-once")
                        : say(
                                "ms.say.read-twice",
                                "values",
                                count("values-recorded"),
                                "twice",
                                count("values-read-twice"),
                                "agreed",
                                count("values-agreed")));
        if (!count("values-from-figures").equals("0")) {
            said.add(say("ms.say.from-figures", "n", count("values-from-figures")));
        }
        return said;
    }

    private List<StudyRecord> studies() {
        return run.dossier().studies().stream()
                .flatMap(s -> run.library().study(s.value()).stream())
                .toList();
    }

    private List<String> study(StudyRecord study) {
        var said = new ArrayList<String>();
        var log = run.compared().matched().evidence().log();
        said.add(say(
                study.kind().value() == StudyKind.BENCH ? "ms.say.bench" : "ms.say.cases",
                "title",
                study.title().value(),
                "where",
                where(study, log),
                "counts",
                String.join(", ", members(study, log)),
                "table",
                Numbering.LOCAL.named(writing)));
        if (!study.conditions().list().isEmpty()) {
            said.add(say(
                    "ms.say.conditions",
                    "conditions",
                    String.join(
                            "; ",
                            study.conditions().list().stream()
                                    .map(e -> run.conditionName(e.key().value()) + " "
                                            + run.terms()
                                                    .circumstance(
                                                            run.library()
                                                                    .catalogue()
                                                                    .condition(e.key()
                                                                            .value()),
                                                            e.value().value().text()))
                                    .toList())));
        }
        said.add(say("ms.say.unit", "unit", unit(study)));
        if (study.kind().value() == StudyKind.CLINICAL) {
            given(said, own.flatMap(ManuscriptRecord::eligibility));
            given(said, own.flatMap(ManuscriptRecord::allocation));
        }
        return said;
    }

    private String unit(StudyRecord study) {
        return run.words().term("level", study.unitOfAnalysis().value().singular());
    }

    private String where(StudyRecord study, RowLog log) {
        var centres = new LinkedHashSet<String>();
        study.centre().ifPresent(c -> centres.add(c.value()));
        log.counts().stream()
                .filter(c -> c.study().equals(study.id()) && !c.centre().isEmpty())
                .forEach(c -> centres.add(c.centre()));
        var parts = new ArrayList<>(centres);
        study.period().ifPresent(p -> parts.add(p.value()));
        return parts.isEmpty() ? say("ms.where-unknown") : String.join(", ", parts);
    }

    /** Small groups of patients are not shown by hospital; a device in all hospitals is a group that may be. */
    private List<String> members(StudyRecord study, RowLog log) {
        return run.dossier().devices().stream()
                .map(Located::value)
                .flatMap(d -> total(study, log, d).stream())
                .toList();
    }

    private Optional<String> total(StudyRecord study, RowLog log, String device) {
        var own = log.counts().stream()
                .filter(c -> c.study().equals(study.id())
                        && c.device().equals(device)
                        && c.step().isEmpty())
                .toList();
        int n = own.stream().mapToInt(RowLog.Count::members).sum();
        if (n == 0) {
            return Optional.empty();
        }
        boolean few =
                study.kind().value() == StudyKind.CLINICAL && n < run.dossier().smallestGroup();
        var shown =
                few ? say("rowlog.few", "limit", String.valueOf(run.dossier().smallestGroup())) : String.valueOf(n);
        return Optional.of(say(
                "ms.members",
                "device",
                run.names().device(device),
                "n",
                writing.held("n " + study.id() + " " + device, shown),
                "units",
                run.words().term("level", own.get(0).level())));
    }

    private List<String> conversions() {
        var kinds = Stream.concat(
                        run.compared().matched().evidence().published().stream(),
                        run.compared().comparisons().stream()
                                .map(c -> c.pairing().ours()))
                .map(Comparand::trail)
                .flatMap(List::stream)
                .map(Step::kind)
                .filter(Step.Kind::converts)
                .sorted()
                .distinct()
                .map(k -> say("ms.conversion." + k.name()))
                .toList();
        return kinds.isEmpty()
                ? List.of()
                : List.of(say(
                        "ms.say.conversions",
                        "steps",
                        String.join("; ", kinds),
                        "table",
                        Numbering.TRAIL.named(writing),
                        "formulas",
                        Numbering.FORMULAS.named(writing)));
    }

    private List<String> comparability() {
        var said = new ArrayList<String>();
        var dossier = run.dossier();
        said.add(say("ms.say.like", "table", Numbering.TOLERANCES.named(writing)));
        var fixed = dossier.fixed().value();
        var seen = dossier.firstSeen().map(Located::value);
        said.add(seen.map(s -> say(
                        fixed.isBefore(s) ? "ms.say.fixed-before" : "ms.say.fixed-after",
                        "fixed",
                        fixed.toString(),
                        "seen",
                        s.toString()))
                .orElseGet(() -> say("ms.say.fixed-unknown", "fixed", fixed.toString())));
        dossier.tolerances().forEach(t -> said.add(tolerance(t, seen)));
        return said;
    }

    private String tolerance(ToleranceRecord t, Optional<LocalDate> seen) {
        var set = t.set().value();
        return say(
                seen.map(set::isBefore).orElse(false) ? "ms.say.tolerance-before" : "ms.say.tolerance-set",
                "condition",
                run.conditionName(t.condition().value()),
                "within",
                t.within().value(),
                "set",
                set.toString(),
                "reason",
                t.reason().map(Located::value).orElse(say("no-reason")));
    }

    private String count(String name) {
        return String.valueOf(counts.getOrDefault(name, 0));
    }

    private String say(String key, String... places) {
        return writing.say(key, places);
    }

    static String upper(String text) {
        return ConditionLine.upperFirst(text);
    }
}
