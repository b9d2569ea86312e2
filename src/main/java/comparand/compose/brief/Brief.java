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
import java.util.ArrayList;
import java.util.List;

/**
 * The brief for a committee. Every list is as long as two pages allow; what is left out stands in the workbook. It holds no
 * total score.
 */
public final class Brief {

    public static final String NAME = "committee-brief";

    private final Run run;
    private final Edition edition;
    private final Look look;
    private final CommitteeTemplate template;
    private final Cells cells;
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
        this.cells = new Cells(run);
        this.said = new Said(run);
        this.questions = new QuestionTable(run, cells);
        this.map = new ComparabilityMap(run, cells, results.comparability());
        this.open = new OpenQuestions(run, cells, results);
        this.facts = new Facts(run, cells, results);
    }

    public Document document() {
        var sections = new ArrayList<Section>();
        var notes = new Notes(run, cells);
        for (var part : template.sections()) {
            part(part.value(), sections, notes);
        }
        notes.close(sections);
        return new Document(NAME, Document.Form.PAGES, edition, look, sections);
    }

    private void part(CommitteeTemplate.Section part, List<Section> sections, Notes notes) {
        switch (part) {
            case DECISION -> section("decision", say("brief.decision"), decision(), sections, notes);
            case SAID -> section("said", say("brief.said"), said.blocks(), sections, notes);
            case QUESTIONS -> section("questions", say("brief.questions"), questions.blocks(), sections, notes);
            case COMPARABILITY -> section("comparability", say("brief.comparability"), map.blocks(), sections, notes);
            case NOT_KNOWN -> section("not-known", say("brief.not-known"), open.notKnown(), sections, notes);
            case CHARACTERISTICS ->
                section("characteristics", say("brief.characteristics"), facts.characteristics(), sections, notes);
            case OUTSIDE_LABEL -> notes.row(say("brief.outside-label"), facts.outsideLabel());
            case COSTS -> notes.row(say("brief.costs"), facts.costs());
            case TRIAL -> notes.row(say("brief.trial"), open.trial());
            case TO_ASK -> notes.row(say("brief.to-ask"), open.toAsk());
            case CHANGES -> notes.row(say("brief.changes"), facts.changes());
            case SOURCES -> {
                notes.print(say("brief.sources"), facts.sources());
                // what was left out stands wherever the sources do
                facts.setAside().ifPresent(aside -> notes.print(say("table.aside"), aside));
            }
            case METHODS -> notes.print(say("brief.methods"), methods());
            case KEY -> notes.print(say("brief.key"), say("committee.key-text"));
            // they are the same in every document, and the pages are two
            case CAUTIONS -> notes.print(say("brief.cautions"), String.join(" ", edition.cautions()));
        }
    }

    private static void section(String name, String heading, List<Block> blocks, List<Section> sections, Notes notes) {
        notes.close(sections);
        sections.add(new Section(name, heading, blocks));
    }

    private List<Block> decision() {
        var dossier = run.dossier();
        return List.of(
                new Paragraph(dossier.decision().value() + ".", Style.BODY),
                small(say(
                        "committee.prepared",
                        "device",
                        run.names().device(dossier.presentDevice().value()),
                        "by",
                        dossier.preparedBy().value(),
                        "asOf",
                        dossier.asOf().value().toString(),
                        "fixed",
                        dossier.fixed().value().toString(),
                        "interests",
                        dossier.interests().map(Located::value).orElseGet(() -> say("brief.interests-open")))));
    }

    private String methods() {
        return String.join(
                " ",
                say("committee.method-difference"),
                say(
                        "committee.method-margin",
                        "fixed",
                        run.dossier().fixed().value().toString()),
                say("committee.method-footing"),
                say("committee.method-family", "m", String.valueOf(run.familySize())));
    }

    static Block small(String text) {
        return new Paragraph(text, Style.SMALL);
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
