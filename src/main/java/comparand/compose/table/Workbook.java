package comparand.compose.table;

import comparand.compose.figure.FigureSet;
import comparand.compose.results.LocalMeans;
import comparand.compose.text.Cells;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.document.Block;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Look;
import comparand.document.Section;
import comparand.document.result.ResultSet;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Standing;
import comparand.model.Summary;
import comparand.stat.Interval;
import comparand.stat.LocalMean;
import comparand.stat.ProportionInterval;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** The evidence workbook: one sheet a section, one table a sheet. */
public final class Workbook {

    public static final String NAME = "evidence-workbook";

    /** The columns of local results that are printed, one page wide; what follows is for the screen. */
    private static final int LOCAL_ON_PAPER = 10;

    private final Run run;
    private final Edition edition;
    private final Cells cells;
    private final ConditionSheets conditions;
    private final ResultSet results;
    private final SharedTables shared;
    private final LineTable lines;
    private final LocalDataTables localData;
    private final UnknownTables unknowns;

    public Workbook(Run run, Edition edition, ResultSet results) {
        this.run = run;
        this.results = results;
        this.edition = edition;
        this.cells = new Cells(run);
        this.conditions = new ConditionSheets(run);
        this.shared = new SharedTables(run, results);
        this.lines = new LineTable(run, results.comparands());
        this.localData = new LocalDataTables(run, results.rowLog());
        this.unknowns = new UnknownTables(run, cells, results.unknowns());
    }

    public Document document() {
        var sheets = new LinkedHashMap<String, List<? extends Block>>();
        sheets.put("questions", List.of(new QuestionSheet(run, cells).table()));
        sheets.put("compare", List.of(new CompareSheet(run).table()));
        sheets.put("together", List.of(new TogetherTables(run, cells).sheet()));
        sheets.put("scenarios", List.of(new ScenarioTables(run, cells, results.scenarios()).sheet()));
        sheets.put("conditions", List.of(conditions.conditions()));
        sheets.put("not-comparable", List.of(conditions.notComparable()));
        sheets.put("unknowns", List.of(unknowns.sheet()));
        sheets.put("local", List.of(local()));
        sheets.put("lines", List.of(lines.table()));
        sheets.put("figures", figures());
        sheets.put("local-data", List.of(localData.countsAtSteps()));
        sheets.put("row-log", List.of(localData.rowLog()));
        sheets.put("characteristics", List.of(shared.characteristics()));
        sheets.put("tolerances", List.of(shared.tolerances()));
        var costs = new CostSheets(run, cells, results.costs());
        sheets.put("costs", List.of(costs.items()));
        if (costs.areSupplied()) {
            sheets.put("case-costs", List.of(costs.perCase()));
        }
        results.weights().ifPresent(w -> {
            sheets.put("weights", List.of(new WeightSheets(run, cells, w).scores()));
            sheets.put("weights-varied", List.of(new WeightVariationSheet(run, cells, w).table()));
        });
        results.screening().map(s -> new ScreeningTables(run, cells, s)).ifPresent(t -> {
            sheets.put("flow", List.of(t.flow()));
            sheets.put("searches", List.of(t.searches()));
            sheets.put("screening", List.of(t.records()));
        });
        sheets.put("sources", List.of(shared.sources()));
        sheets.put("aside", List.of(shared.setAside()));
        sheets.put("findings", List.of(shared.findings()));
        sheets.put("changes", List.of(ChangeSheet.table(run, cells, results.changes())));
        sheets.put("trail", List.of(trail()));
        var sections = new ArrayList<Section>();
        sections.add(readFirst(sheets));
        sheets.forEach((key, blocks) -> sections.add(new Section(
                run.words().say("sheet." + key), run.words().say("sheet.about." + key), List.copyOf(blocks))));
        return new Document(NAME, Document.Form.WORKBOOK, edition, Look.PLAIN, sections);
    }

    private List<Block> figures() {
        var graphs = new FigureSet(run)
                .all().stream()
                        .map(c -> (Block) new Block.Graph(c, c.message()))
                        .toList();
        return graphs.isEmpty()
                ? List.of(new Block.Paragraph(run.words().say("none"), Block.Paragraph.Style.BODY))
                : graphs;
    }

    private Section readFirst(Map<String, List<? extends Block>> sheets) {
        var blocks = new ArrayList<Block>();
        blocks.add(about());
        var list = sheets.keySet().stream()
                .map(key -> List.<Cell>of(
                        new Cell.Link(
                                run.words().say("sheet." + key), run.words().say("sheet." + key)),
                        Cell.words(run.words().say("sheet.about." + key))))
                .toList();
        blocks.add(new Table(
                "Sheets", "", List.of(cells.name("col.sheet", 30), cells.text("col.about", 100)), list, List.of()));
        blocks.add(Key.ofWorkbook(run, cells));
        return new Section(run.words().say("sheet.read-first"), edition.title(), blocks);
    }

    private Table about() {
        var dossier = run.dossier();
        var rows = new ArrayList<List<Cell>>();
        edition.marks().forEach(m -> rows.add(item("about.data", m)));
        rows.add(item("about.question", dossier.question().value()));
        rows.add(item("about.decision", dossier.decision().value()));
        rows.add(
                item("about.present", run.names().device(dossier.presentDevice().value())));
        rows.add(item("about.prepared", dossier.preparedBy().value()));
        rows.add(List.of(
                Cell.strong(run.words().say("about.as-of")),
                new Cell.Day(dossier.asOf().value())));
        rows.add(List.of(
                Cell.strong(run.words().say("about.fixed")),
                new Cell.Day(dossier.fixed().value())));
        dossier.firstSeen()
                .ifPresent(d ->
                        rows.add(List.of(Cell.strong(run.words().say("about.first-seen")), new Cell.Day(d.value()))));
        rows.add(item("about.state", edition.state()));
        rows.add(item("about.tool", edition.tool()));
        rows.add(item("about.fingerprint", edition.fingerprint()));
        results.weights().ifPresent(w -> {
            rows.add(item("about.weights", w.setBy() + ", " + w.on()));
            rows.add(item("about.scores", w.rule()));
        });
        edition.cautions().forEach(c -> rows.add(item("about.caution", c)));
        return new Table(
                "About", "", List.of(cells.name("col.item", 30), cells.text("col.entry", 100)), rows, List.of());
    }

    private List<Cell> item(String key, String text) {
        return List.of(Cell.strong(run.words().say(key)), Cell.words(text));
    }

    private Table local() {
        var columns = List.of(
                cells.name("col.metric", 34),
                cells.text("col.unit", 13),
                cells.name("col.device", 14),
                cells.text("col.step", 34),
                cells.number("col.mean", 10),
                cells.number("col.sd", 9),
                cells.text("col.n", 10),
                cells.number("col.low", 11),
                cells.number("col.high", 11),
                cells.text("col.events", 60),
                cells.text("col.mean-of", 44),
                cells.text("col.between", 20),
                cells.number("col.most-low", 11),
                cells.number("col.most-high", 11),
                cells.text("col.each", 36),
                cells.text("col.id", 50));
        var rows = run.compared().matched().evidence().localResults().stream()
                .map(this::local)
                .toList();
        return new Table("LocalResults", "", columns, rows, List.of(), LOCAL_ON_PAPER);
    }

    private List<Cell> local(Comparand c) {
        boolean events = c.summary() instanceof Summary.Events;
        var sampled = c.summary() instanceof Summary.Sampled s ? Optional.of(s) : Optional.<Summary.Sampled>empty();
        return List.of(
                cells.metric(c.metric()),
                cells.unit(c.metric()),
                Cell.words(run.names().brief(c.device())),
                cells.step(c),
                events ? cells.none() : cells.centre(c, Standing.SAME),
                cells.sd(c),
                cells.n(c),
                cells.limit(c, true),
                cells.limit(c, false),
                c.summary() instanceof Summary.Events e
                        ? Cell.words(
                                run.answers().events(e, ProportionInterval.EXACT.of(e.events(), e.of(), Answer.LEVEL)))
                        : cells.none(),
                sampled.flatMap(Summary.Sampled::local)
                        .map(m -> Cell.words(
                                ConditionLine.upperFirst(run.remarks().centres().of(m))))
                        .orElseGet(cells::none),
                sampled.map(s -> between(c, s)).orElseGet(cells::none),
                sampled.map(s -> most(c, s, Interval::low)).orElseGet(cells::none),
                sampled.map(s -> most(c, s, Interval::high)).orElseGet(cells::none),
                sampled.map(s -> each(c, s)).orElseGet(cells::none),
                Cell.verbatim(c.id()));
    }

    /** The SD between hospitals, with its interval. */
    private Cell between(Comparand c, Summary.Sampled s) {
        return s.local()
                .flatMap(LocalMean::spread)
                .map(spread -> {
                    double sd = Math.sqrt(spread.twoStage().tau2());
                    int decimals = run.figures().of(c, s.moments().mean());
                    return Cell.words(run.figures().number(sd, decimals) + " ("
                            + run.figures().range(LocalMeans.between(spread), decimals) + ")");
                })
                .orElseGet(cells::none);
    }

    private Cell most(Comparand c, Summary.Sampled s, ToDoubleFunction<Interval> end) {
        return LocalMeans.tolerance(s)
                .map(i -> (Cell) run.figures()
                        .cell(
                                end.applyAsDouble(i),
                                run.figures().of(c, s.moments().mean()),
                                "",
                                ""))
                .orElseGet(cells::none);
    }

    private Cell each(Comparand c, Summary.Sampled s) {
        var each = LocalMeans.each(c, s, run.dossier());
        return each.isEmpty()
                ? cells.none()
                : Cell.words(each.stream()
                        .map(x -> run.figures().number(x, run.figures().of(c, x)))
                        .collect(Collectors.joining("; ")));
    }

    private Table trail() {
        var columns = List.of(
                cells.name("col.id", 44),
                cells.text("col.locator", 26),
                cells.number("col.order", 6),
                cells.text("col.kind-of-step", 16),
                cells.text("col.text", 110),
                cells.text("col.formula", 60));
        var rows = new ArrayList<List<Cell>>();
        for (var c : run.comparands()) {
            int order = 0;
            for (var step : c.trail()) {
                order++;
                rows.add(List.of(
                        Cell.verbatim(c.id()),
                        Cell.words(run.names().locator(c)),
                        run.figures().cell(order, 0, "", ""),
                        cells.term(
                                "step-kind",
                                step.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ')),
                        Cell.words(run.trails().of(step)),
                        step.formula().isEmpty()
                                ? cells.none()
                                : Cell.words(run.trails().formula(c, step))));
            }
        }
        return new Table("Trail", "", columns, rows, List.of());
    }
}
