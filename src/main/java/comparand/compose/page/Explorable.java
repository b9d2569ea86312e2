package comparand.compose.page;

import comparand.compose.figure.FigureSet;
import comparand.compose.table.Key;
import comparand.compose.table.ScenarioTables;
import comparand.compose.table.ScreeningTables;
import comparand.compose.table.SharedTables;
import comparand.compose.table.UnknownTables;
import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.document.Block;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Paragraph.Style;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Look;
import comparand.document.Section;
import comparand.document.exploration.Page;
import comparand.document.result.ResultSet;
import comparand.model.template.PageTemplate;
import java.util.ArrayList;
import java.util.List;

/** The page: the questions, a part for each, what is not known, where all is from; and what can be tried on it. */
public final class Explorable {

    public static final String NAME = "page";

    private final Run run;
    private final Edition edition;
    private final ResultSet results;
    private final PageTemplate template;
    private final Cells cells;
    private final Ladders ladders;
    private final SharedTables shared;

    public Explorable(Run run, Edition edition, ResultSet results, PageTemplate template) {
        this.run = run;
        this.edition = edition;
        this.results = results;
        this.template = template;
        this.cells = new Cells(run);
        this.ladders = new Ladders(run);
        this.shared = new SharedTables(run, results);
    }

    public Page page() {
        var sections = new ArrayList<Section>();
        template.sections().forEach(s -> part(s.value(), sections));
        return new Page(
                new Document(NAME, Document.Form.SCREEN, edition, Look.PLAIN, sections),
                new Explored(run, edition, results, cells, ladders).exploration());
    }

    private void part(PageTemplate.Section part, List<Section> sections) {
        switch (part) {
            case QUESTIONS ->
                sections.add(new Section(
                        "questions",
                        say("sheet.questions"),
                        List.of(
                                new Paragraph(run.dossier().decision().value() + ".", Style.BODY),
                                new QuestionList(run, cells).table())));
            case ANSWERS -> {
                var figures = new FigureSet(run);
                run.questions()
                        .forEach((question, metric) -> sections.add(
                                new QuestionPart(run, cells, ladders, figures, question, metric).section()));
            }
            case NOT_KNOWN -> sections.add(new UnknownTables(run, cells, results.unknowns()).section());
            case SCENARIOS ->
                new ScenarioTables(run, cells, results.scenarios()).section().ifPresent(sections::add);
            case SOURCES -> sections.add(section("table.sources", "sheet.about.sources", shared.sources()));
            case SET_ASIDE -> sections.add(section("table.aside", "sheet.about.aside", shared.setAside()));
            case SEARCH ->
                results.screening()
                        .map(s -> new ScreeningTables(run, cells, s).section())
                        .ifPresent(sections::add);
            case TOLERANCES ->
                sections.add(section("sheet.tolerances", "sheet.about.tolerances", shared.tolerancesByMetric()));
            case FINDINGS -> sections.add(section("sheet.findings", "table.findings", shared.findings()));
            case TRAIL -> sections.add(new Section("trail", say("sheet.trail"), trail()));
            case KEY ->
                sections.add(
                        new Section(say("page.static.key"), say("table.reading"), List.of(Key.ofTable(run, cells))));
        }
    }

    private List<Block> trail() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(say("sheet.about.trail") + ".", Style.BODY));
        blocks.addAll(ladders.blocks());
        return blocks;
    }

    private Section section(String name, String heading, Block block) {
        return new Section(say(name), say(heading), List.of(block));
    }

    private String say(String key) {
        return run.words().say(key);
    }
}
