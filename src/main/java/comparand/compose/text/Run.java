package comparand.compose.text;

import comparand.diag.Located;
import comparand.metric.Better;
import comparand.metric.Metric;
import comparand.model.Comparand;
import comparand.model.Compared;
import comparand.model.Comparison;
import comparand.model.Library;
import comparand.model.Summary;
import comparand.model.Tolerances;
import comparand.model.library.DossierRecord;
import comparand.model.library.QuestionRecord;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What all documents of a run are composed from: the comparisons, and the helpers that print them alike. */
public final class Run {

    private final Compared compared;
    private final Words words;
    private final Terms terms;
    private final Figures figures;
    private final Names names;
    private final SummaryText summaries;
    private final ConditionLine conditions;
    private final AnswerText answers;
    private final Remarks remarks;
    private final TogetherText together;
    private final TrailText trails;
    private final Tolerances tolerances;

    public Run(Compared compared, Words words) {
        this.compared = compared;
        this.words = words;
        this.terms = new Terms(words);
        this.figures = new Figures(words);
        this.names = new Names(compared, words);
        this.summaries = new SummaryText(words, figures);
        this.conditions = new ConditionLine(words, names, library().catalogue());
        this.answers = new AnswerText(words, figures, conditions, names);
        this.together = new TogetherText(words, figures, names, answers);
        this.trails = new TrailText(words);
        this.remarks = new Remarks(
                words,
                figures,
                conditions,
                new CentreText(words, names, compared.matched().evidence().log()),
                trails,
                familySize());
        this.tolerances = compared.matched().evidence().checked().tolerances();
    }

    /** How many comparisons the adjusted p values allow for. */
    public int familySize() {
        return (int) compared.comparisons().stream()
                .filter(c -> c.adjustedP().isPresent())
                .count();
    }

    /** Every comparand that is shown, each once: local ones, published ones, those set aside. */
    public List<Comparand> comparands() {
        var all = new LinkedHashMap<String, Comparand>();
        compared.matched().evidence().localResults().forEach(c -> all.put(c.id(), c));
        // of those made to meet a published value, the ones that were set beside it
        compared.comparisons().stream()
                .map(c -> c.pairing().ours())
                .filter(Comparand::isLocal)
                .forEach(c -> all.putIfAbsent(c.id(), c));
        compared.matched().evidence().published().forEach(c -> all.put(c.id(), c));
        compared.matched()
                .evidence()
                .setAside()
                .forEach(a -> all.put(a.comparand().id(), a.comparand()));
        return List.copyOf(all.values());
    }

    /** One of them by its id. */
    public Comparand comparand(String id) {
        return comparands().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no value " + id));
    }

    /** The dossier's questions with their metrics. */
    public Map<QuestionRecord, Metric> questions() {
        var questions = new LinkedHashMap<QuestionRecord, Metric>();
        dossier()
                .questions()
                .forEach(q -> questions.put(
                        q, library().catalogue().find(q.metric().value()).orElseThrow()));
        return questions;
    }

    /** The name of a condition, of the catalogue or of the library; its id where there is none. */
    public String conditionName(String id) {
        return library()
                .catalogue()
                .condition(id)
                .map(c -> terms().named(c.name()))
                .orElse(id);
    }

    /** Which way is favourable: as the dossier says, or else as the metric does. */
    public Better better(QuestionRecord question, Metric metric) {
        return question.better().map(Located::value).orElse(metric.better());
    }

    public List<Comparison> comparisons(Metric metric) {
        return compared.comparisons().stream()
                .filter(c -> c.pairing().ours().metric().equals(metric))
                .toList();
    }

    /** Why a value stands alone. */
    public String unpaired(Comparand comparand) {
        return words.say("unpaired." + aloneFor(comparand));
    }

    /** What would have to be there to set beside it. */
    public String toPair(Comparand comparand) {
        return words.say("to-pair." + aloneFor(comparand));
    }

    private static String aloneFor(Comparand comparand) {
        if (comparand.summary() instanceof Summary.Words) {
            return "claim";
        }
        return comparand.summary() instanceof Summary.Point point && point.kind() == Summary.PointKind.NOMINAL
                ? "no-present"
                : "no-local";
    }

    public Compared compared() {
        return compared;
    }

    public DossierRecord dossier() {
        return compared.matched().evidence().checked().dossier();
    }

    public Library library() {
        return compared.matched().evidence().checked().library();
    }

    public Words words() {
        return words;
    }

    public Terms terms() {
        return terms;
    }

    public Figures figures() {
        return figures;
    }

    public Names names() {
        return names;
    }

    public SummaryText summaries() {
        return summaries;
    }

    public ConditionLine conditions() {
        return conditions;
    }

    public AnswerText answers() {
        return answers;
    }

    public Remarks remarks() {
        return remarks;
    }

    public TogetherText together() {
        return together;
    }

    public Tolerances tolerances() {
        return tolerances;
    }

    public TrailText trails() {
        return trails;
    }
}
