package comparand.compose.manuscript;

import comparand.cite.Style;
import comparand.compose.figure.FigureSet;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.compose.text.RunFacts;
import comparand.diag.Located;
import comparand.document.Block;
import comparand.document.Block.Graph;
import comparand.document.Block.Paragraph;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Look;
import comparand.document.Section;
import comparand.document.result.ResultSet;
import comparand.model.template.ManuscriptTemplate;
import java.util.ArrayList;
import java.util.List;

/** The draft of a manuscript: its parts in the order of the template. */
public final class Manuscript {

    public static final String NAME = "manuscript";

    private final Writing writing;
    private final Run run;
    private final Edition edition;
    private final RunFacts facts;
    private final ResultSet results;
    private final ManuscriptTemplate template;
    private final Look look;

    public Manuscript(
            Run run, Edition edition, RunFacts facts, ResultSet results, ManuscriptTemplate template, Look look) {
        this.run = run;
        this.edition = edition;
        this.facts = facts;
        this.results = results;
        this.template = template;
        this.look = look;
        this.writing = new Writing(run, style(template));
    }

    private static Style style(ManuscriptTemplate template) {
        return template.references()
                .map(r -> switch (r.value()) {
                    case NUMERIC -> Style.NUMERIC;
                    case AMA -> Style.AMA;
                    case APA -> Style.APA;
                })
                .orElse(Style.NUMERIC);
    }

    public Document document() {
        var sections = new ArrayList<Section>();
        for (var part : template.sections()) {
            section(part.value(), sections);
        }
        sections.add(new Section("cautions", say("table.cautions"), cautions(), false));
        return new Document(NAME, Document.Form.TEXT, edition, look, sections);
    }

    private void section(ManuscriptTemplate.Section part, List<Section> sections) {
        var heading = say("ms.section." + part.name());
        var blocks = blocks(part);
        if (!blocks.isEmpty()) {
            sections.add(new Section(part.name(), heading, blocks, !sections.isEmpty() && beginsPage(part)));
        }
    }

    /** The list of the author is a page of its own, and is taken out. */
    private static boolean beginsPage(ManuscriptTemplate.Section part) {
        return switch (part) {
            case METHODS, TABLES, FIGURES, REFERENCES, SUPPLEMENT -> true;
            case TO_DO, RESULTS, LIMITATIONS -> false;
        };
    }

    private List<Block> blocks(ManuscriptTemplate.Section part) {
        return switch (part) {
            case TO_DO -> new AuthorsList(writing).blocks(results);
            case METHODS -> methods();
            case RESULTS -> results();
            case TABLES -> new Tables(writing, results).main();
            case FIGURES -> figures();
            case LIMITATIONS -> new LimitationText(writing).blocks(results.limitations());
            case REFERENCES -> writing.list();
            case SUPPLEMENT -> new Supplement(writing, results).tables();
        };
    }

    private List<Block> methods() {
        return new Methods(writing, results).blocks(new Statistics(writing).sentences(facts));
    }

    private List<Block> results() {
        var blocks = new ArrayList<>(new Flow(writing, results.counts()).blocks());
        run.questions()
                .values()
                .forEach(metric -> blocks.addAll(new MetricResults(writing, metric, results.unknowns()).blocks()));
        statements(blocks);
        return blocks;
    }

    /** What journals ask for at the end of the text, where the dossier has it. */
    private void statements(List<Block> blocks) {
        var said = new ArrayList<String>();
        run.dossier().manuscript().ifPresent(m -> {
            m.funding().map(Located::value).map(Writing::sentence).ifPresent(said::add);
            m.dataAvailability().map(Located::value).map(Writing::sentence).ifPresent(said::add);
        });
        run.dossier().interests().map(Located::value).map(Writing::sentence).ifPresent(said::add);
        if (!said.isEmpty()) {
            blocks.add(new Block.Heading(say("ms.statements")));
            blocks.add(writing.prose("res_statements", said));
        }
    }

    private List<Block> figures() {
        var blocks = new ArrayList<Block>();
        for (var chart : new FigureSet(run).charts().toList()) {
            var legend = new ArrayList<String>(List.of(Writing.sentence(ConditionLine.upperFirst(chart.message()))));
            chart.notes().forEach(n -> legend.add(Writing.sentence(n)));
            // journals set legends themselves: what is said below the figure stands there only
            blocks.add(new Graph(
                    chart.withNotes(List.of()),
                    say(
                            "ms.figure.caption",
                            "n",
                            String.valueOf(blocks.size() + 1),
                            "caption",
                            String.join(" ", legend))));
        }
        return blocks;
    }

    private List<Block> cautions() {
        return edition.cautions().stream()
                .map(c -> (Block) new Paragraph(c, Paragraph.Style.SMALL))
                .toList();
    }

    private String say(String key, String... places) {
        return writing.say(key, places);
    }
}
