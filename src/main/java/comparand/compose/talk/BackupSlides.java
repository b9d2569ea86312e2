package comparand.compose.talk;

import comparand.compose.talk.Draft.Asked;
import comparand.compose.talk.Draft.Speech;
import comparand.compose.text.Run;
import comparand.document.Block.Table;
import comparand.document.result.ResultSet;
import comparand.document.result.ScreeningResult;
import comparand.document.talk.Part;
import comparand.metric.Metric;
import comparand.model.Comparand;
import comparand.model.Comparison;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Slides for questions from the floor, and the index that leads to them. */
final class BackupSlides {

    static final String INDEX = "index";
    static final String CONDITIONS = "conditions";
    static final String HOSPITALS = "hospitals";
    static final String UNKNOWNS = "unknowns";
    static final String METHODS = "methods";
    private static final String SCENARIOS = "scenarios";
    private static final String REFERENCES = "references";
    private static final String SCREENING = "screening";
    private static final String ASIDE = "aside";
    private static final String CAUTIONS = "cautions";

    private final Run run;
    private final BackupTables tables;
    private final PairTables pairs;
    private final Speeches speeches;
    private final Split split;
    private final Optional<ScreeningResult> screening;

    BackupSlides(Run run, ResultSet results, Speeches speeches, Split split) {
        this.run = run;
        this.tables = new BackupTables(run, results);
        this.pairs = new PairTables(run);
        this.speeches = speeches;
        this.split = split;
        this.screening = results.screening();
    }

    static String table(Metric metric) {
        return "table-" + metric.id();
    }

    static String trail(Metric metric) {
        return "trail-" + metric.id();
    }

    /** Questions in the order in which they are asked, each with the slide that answers it. */
    Draft index(List<Metric> messages) {
        var entries = new ArrayList<Part.Entry>();
        entries.add(new Part.Entry(say("talk.ask.flow"), CONDITIONS));
        entries.add(new Part.Entry(say("talk.ask.units"), HOSPITALS));
        entries.add(new Part.Entry(say("talk.ask.who"), says()));
        run.questions()
                .forEach((question, metric) -> entries.add(new Part.Entry(
                        question.asks().value(),
                        messages.contains(metric) ? MessageSlides.id(metric) : table(metric))));
        if (!run.compared().scenarios().isEmpty()) {
            entries.add(new Part.Entry(say("talk.ask.scenarios"), SCENARIOS));
        }
        entries.add(new Part.Entry(say("talk.ask.unknowns"), UNKNOWNS));
        entries.add(new Part.Entry(say("talk.ask.methods"), METHODS));
        entries.add(new Part.Entry(say("talk.ask.references"), REFERENCES));
        if (screening.isPresent()) {
            entries.add(new Part.Entry(say("talk.ask.screening"), SCREENING));
        }
        if (!run.compared().matched().evidence().setAside().isEmpty()) {
            entries.add(new Part.Entry(say("talk.ask.aside"), ASIDE));
        }
        entries.add(new Part.Entry(say("talk.ask.cautions"), CAUTIONS));
        return new Draft(
                INDEX,
                say("talk.title.index"),
                List.of(new Part.Index(entries)),
                "",
                speeches.plain(
                        say("talk.say.index"),
                        entries.stream()
                                .map(e -> new Asked(e.question(), e.slide()))
                                .toList()),
                true,
                List.of());
    }

    /** The trail of the firmest finding; without one, the list of sources. */
    private String says() {
        return Firmness.headline(run.compared().comparisons())
                .map(c -> trail(c.pairing().ours().metric()))
                .orElse(REFERENCES);
    }

    /** All other backup slides, in the order of the index. */
    List<Draft> slides() {
        var drafts = new ArrayList<Draft>();
        var all = run.compared().comparisons();
        drafts.addAll(shared(CONDITIONS, say("talk.title.conditions"), pairs.conditions()));
        drafts.addAll(shared(HOSPITALS, say("talk.title.hospitals"), tables.counts()));
        for (var metric : run.questions().values()) {
            drafts.addAll(pairsOf(metric));
        }
        for (var metric : run.questions().values()) {
            var values = values(metric);
            if (!values.isEmpty()) {
                drafts.addAll(split.of(
                        draft(
                                trail(metric),
                                say("talk.title.trail", "metric", run.terms().metric(metric)),
                                new Speech(
                                        List.of(say("talk.say.backup")),
                                        List.of(),
                                        speeches.sources(values),
                                        List.of(),
                                        List.of(new Asked(say("talk.ask.table"), table(metric))),
                                        List.of(say("talk.dont.ranking"))),
                                values),
                        pairs.trail(metric, values)));
            }
        }
        if (!run.compared().scenarios().isEmpty()) {
            drafts.addAll(shared(SCENARIOS, say("talk.title.scenarios"), tables.scenarios()));
        }
        drafts.addAll(shared(UNKNOWNS, say("talk.title.unknowns"), tables.unknowns()));
        drafts.addAll(shared(METHODS, say("talk.title.methods"), tables.methods()));
        drafts.addAll(shared(REFERENCES, say("talk.title.references"), tables.references()));
        screening.map(this::screened).ifPresent(drafts::add);
        if (!all.isEmpty() && !run.compared().matched().evidence().setAside().isEmpty()) {
            drafts.addAll(shared(ASIDE, say("talk.title.aside"), tables.setAside()));
        }
        drafts.addAll(shared(CAUTIONS, say("talk.title.cautions"), tables.cautions()));
        return drafts;
    }

    private List<Draft> pairsOf(Metric metric) {
        var comparisons = run.comparisons(metric);
        return split.of(
                draft(
                        table(metric),
                        say("talk.title.table", "metric", run.terms().metric(metric)),
                        speeches.of(
                                List.of(say("talk.say.backup")),
                                comparisons,
                                List.of(
                                        new Asked(
                                                say("talk.ask.who"),
                                                values(metric).isEmpty() ? REFERENCES : trail(metric)),
                                        new Asked(say("talk.ask.flow"), CONDITIONS))),
                        published(comparisons)),
                pairs.table(metric, comparisons));
    }

    private static List<Comparand> published(List<Comparison> comparisons) {
        return comparisons.stream()
                .flatMap(c -> Stream.of(c.pairing().ours(), c.pairing().theirs()))
                .filter(c -> !c.isLocal())
                .toList();
    }

    /** Every value that stands in a pair of the metric, each once. */
    private List<Comparand> values(Metric metric) {
        var values = new LinkedHashSet<Comparand>();
        for (var c : run.comparisons(metric)) {
            values.add(c.pairing().ours());
            values.add(c.pairing().theirs());
        }
        return List.copyOf(values);
    }

    private List<Draft> shared(String id, String title, Table table) {
        return split.of(
                draft(
                        id,
                        title,
                        speeches.plain(say("talk.say.backup"), List.of(new Asked(say("talk.ask.methods"), METHODS))),
                        List.of()),
                table);
    }

    private Draft screened(ScreeningResult log) {
        return new Draft(
                SCREENING,
                say("talk.title.screening"),
                List.of(new ScreeningSieve(run.words(), log).part()),
                say("talk.strip.screening"),
                speeches.plain(say("talk.say.backup"), List.of(new Asked(say("talk.ask.references"), REFERENCES))),
                true,
                List.of());
    }

    private static Draft draft(String id, String title, Speech speech, List<Comparand> published) {
        return new Draft(id, title, List.of(), "", speech, true, published);
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
