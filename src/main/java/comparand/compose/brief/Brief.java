package comparand.compose.brief;

import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.diag.Located;
import comparand.document.Block;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Paragraph.Style;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Look;
import comparand.document.Section;
import comparand.document.result.ResultSet;
import comparand.model.template.CommitteeTemplate;
import java.util.List;

/**
 * The brief for a committee. Every list is as long as two pages allow; what is left out is counted and stands in the
 * workbook. It holds no total score.
 */
public final class Brief {

    public static final String NAME = "committee-brief";

    private final Run run;
    private final Edition edition;
    private final Look look;
    private final CommitteeTemplate template;
    private final Said said;
    private final QuestionTable questions;
    private final ComparabilityMap map;
    private final OpenQuestions open;
    private final Facts facts;

    public Brief(Run run, Edition edition, ResultSet results, CommitteeTemplate template, Look look) {
        this.run = run;
        this.edition = edition;
        this.look = look;
        this.template = template;
        var cells = new Cells(run);
        this.said = new Said(run);
        this.questions = new QuestionTable(run, cells);
        this.map = new ComparabilityMap(run, cells, results.comparability());
        this.open = new OpenQuestions(run, cells, results);
        this.facts = new Facts(run, cells, results);
    }

    public Document document() {
        var sections = template.sections().stream()
                .map(Located::value)
                .map(this::section)
                .toList();
        return new Document(NAME, Document.Form.PAGES, edition, look, sections);
    }

    private Section section(CommitteeTemplate.Section part) {
        return switch (part) {
            case DECISION -> section("brief.decision", decision());
            case SAID -> section("brief.said", said.blocks());
            case QUESTIONS -> section("brief.questions", questions.blocks());
            case COMPARABILITY -> section("brief.comparability", map.blocks());
            case NOT_KNOWN -> section("brief.not-known", open.notKnown());
            case CHARACTERISTICS -> section("brief.characteristics", facts.characteristics());
            case OUTSIDE_LABEL -> section("brief.outside-label", facts.outsideLabel());
            case COSTS -> section("brief.costs", facts.costs());
            case TRIAL -> section("brief.trial", open.trial());
            case TO_ASK -> section("brief.to-ask", open.toAsk());
            case CHANGES -> section("brief.changes", facts.changes());
            case SOURCES -> section("brief.sources", facts.sources());
            case METHODS -> section("brief.methods", methods());
            case KEY -> section("brief.key", key());
            case CAUTIONS -> section("brief.cautions", cautions());
        };
    }

    private Section section(String heading, List<Block> blocks) {
        return new Section(heading.replace("brief.", ""), run.words().say(heading), blocks);
    }

    private List<Block> decision() {
        var dossier = run.dossier();
        return List.of(
                new Paragraph(dossier.decision().value() + ".", Style.BODY),
                new Paragraph(
                        run.words()
                                .say(
                                        "brief.prepared",
                                        "device",
                                        run.names().device(dossier.presentDevice().value()),
                                        "by",
                                        dossier.preparedBy().value(),
                                        "asOf",
                                        dossier.asOf().value().toString(),
                                        "fixed",
                                        dossier.fixed().value().toString(),
                                        "interests",
                                        dossier.interests().map(Located::value).orElseGet(() -> run.words()
                                                .say("brief.interests-open"))),
                        Style.SMALL));
    }

    private List<Block> methods() {
        return List.of(
                small(run.words()
                        .say("brief.method-difference")),
                small(run.words()
                        .say("brief.method-margin", "fixed", run.dossier().fixed().value().toString())),
                small(run.words().say("brief.method-footing")),
                small(run.words().say("brief.method-family", "m", String.valueOf(run.familySize()))));
    }

    private List<Block> key() {
        return List.of(small(run.words().say("brief.key-text")));
    }

    /** In one paragraph: they are the same in every document, and the pages are two. */
    private List<Block> cautions() {
        return List.of(small(String.join(" ", edition.cautions())));
    }

    static Block small(String text) {
        return new Paragraph(text, Style.SMALL);
    }
}
