package comparand.compose.table;

import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.document.Block;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Paragraph.Style;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Look;
import comparand.document.Section;
import comparand.document.result.ResultSet;
import java.util.ArrayList;
import java.util.List;

/** The evidence table for print: one chapter a question, with what differs in notes under each table. */
public final class EvidenceTable {

    public static final String NAME = "evidence-table";

    private final Run run;
    private final Edition edition;
    private final Cells cells;
    private final ResultSet results;
    private final SharedTables shared;
    private final LocalDataTables localData;
    private final UnknownTables unknowns;

    public EvidenceTable(Run run, Edition edition, ResultSet results) {
        this.run = run;
        this.edition = edition;
        this.results = results;
        this.cells = new Cells(run);
        this.shared = new SharedTables(run, results);
        this.localData = new LocalDataTables(run, results.rowLog());
        this.unknowns = new UnknownTables(run, cells, results.unknowns());
    }

    public Document document() {
        var sections = new ArrayList<Section>();
        sections.add(new MainPoints(run).section());
        run.questions()
                .forEach((question, metric) ->
                        sections.add(new QuestionChapter(run, cells, question, metric).section()));
        sections.add(unknowns.section());
        new ScenarioTables(run, cells, results.scenarios()).section().ifPresent(sections::add);
        sections.add(new Section(
                say("sheet.characteristics"), say("sheet.about.characteristics"), List.of(shared.characteristics())));
        sections.add(new Section(say("sheet.local-data"), say("table.local-data"), List.of(localData.counts())));
        results.screening()
                .map(s -> new ScreeningTables(run, cells, s).section())
                .ifPresent(sections::add);
        sections.add(new Section(say("table.sources"), say("sheet.about.sources"), List.of(shared.sources())));
        sections.add(new Section(say("table.aside"), say("sheet.about.aside"), List.of(shared.setAside())));
        sections.add(new Section(
                say("sheet.tolerances"), say("sheet.about.tolerances"), List.of(shared.tolerancesByMetric())));
        sections.add(new Section(say("sheet.findings"), say("table.findings"), List.of(shared.findings())));
        var reading = new ArrayList<Block>(List.of(Key.ofTable(run, cells)));
        sections.add(new Section("Key", say("table.reading"), reading));
        var cautions = edition.cautions().stream()
                .map(c -> (Block) new Paragraph(c, Style.BODY))
                .toList();
        sections.add(new Section(say("table.cautions"), say("table.cautions"), cautions));
        return new Document(NAME, Document.Form.WIDE_PAGES, edition, Look.PLAIN, sections);
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
