package comparand.compose.brief;

import comparand.compose.table.SharedTables;
import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.document.Block;
import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Paragraph.Style;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.result.ChangesResult.ChangeResult;
import comparand.document.result.CostsResult.CaseCostResult;
import comparand.document.result.CostsResult.CostLineResult;
import comparand.document.result.ResultSet;
import comparand.document.result.RowLogResult.LabelUseResult;
import comparand.document.result.SourceResult;
import comparand.model.Comparand;
import comparand.model.library.DocumentRecord;
import comparand.model.library.Price;
import comparand.model.library.SourceRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What documents state, use outside the label, costs, changes and sources, as short as two pages ask for. */
final class Facts {

    private static final int MOST_PROPERTIES = 13;
    private static final int MOST_CHANGES = 4;

    private final Run run;
    private final Cells cells;
    private final ResultSet results;

    Facts(Run run, Cells cells, ResultSet results) {
        this.run = run;
        this.cells = cells;
        this.results = results;
    }

    /** The rows of the table of characteristics, each with its place behind it, and the documents last. */
    List<Block> characteristics() {
        var whole = new SharedTables(run, results).characteristics();
        var columns = new ArrayList<Column>(List.of(cells.name("col.property", 32)));
        run.dossier()
                .devices()
                .forEach(d -> columns.add(new Column(run.names().device(d.value()), 40, Align.LEFT, false)));
        var rows = new ArrayList<List<Cell>>();
        whole.rows().stream().limit(MOST_PROPERTIES).forEach(r -> {
            var row = new ArrayList<Cell>(List.of(r.get(1)));
            for (int c = 2; c + 1 < r.size(); c += 2) {
                boolean stated = !r.get(c + 1).shown().equals(run.words().say("not-applicable"));
                row.add(stated ? Cell.words(r.get(c).shown() + " (" + r.get(c + 1).shown() + ")") : r.get(c));
            }
            rows.add(row);
        });
        var documents = new ArrayList<Cell>(List.of(cells.word("brief.document")));
        run.dossier().devices().forEach(d -> documents.add(Cell.words(instructions(d.value()))));
        rows.add(documents);
        return List.of(new Table("BriefCharacteristics", "", columns, rows, List.of()));
    }

    private String instructions(String device) {
        var source = run.library()
                .device(device)
                .flatMap(d -> run.library().source(d.instructions().value()))
                .orElseThrow();
        return run.words()
                .say(
                        "brief.instructions",
                        "number",
                        String.valueOf(run.names().number(source.id())),
                        "revision",
                        source.document().map(DocumentRecord::text).orElseGet(() -> run.words()
                                .say("not-reported")));
    }

    List<Block> outsideLabel() {
        var ofCases = results.rowLog().outsideLabel().stream()
                .filter(l -> l.level().equals("cases") || l.level().equals("patients"))
                .map(this::outside)
                .toList();
        return List.of(new Paragraph(
                ofCases.isEmpty() ? run.words().say("brief.no-cases") : String.join("; ", ofCases) + ".", Style.BODY));
    }

    private String outside(LabelUseResult l) {
        return run.names().device(l.device()) + " "
                + run.words()
                        .say(
                                "rowlog.outside",
                                "outside",
                                String.valueOf(l.outside()),
                                "of",
                                String.valueOf(l.of()),
                                "condition",
                                l.condition(),
                                "limit",
                                l.limit());
    }

    List<Block> costs() {
        if (results.costs().lines().isEmpty()) {
            return List.of(new Paragraph(run.words().say("brief.costs-none"), Style.BODY));
        }
        var columns = List.of(
                cells.name("col.device", 18),
                cells.text("col.cost", 16),
                cells.text("brief.cost-items", 44),
                cells.text("col.given-by", 54),
                cells.text("col.not-included", 30));
        var rows = results.costs().perCase().stream().map(this::cost).toList();
        return List.of(new Table("BriefCosts", "", columns, rows, List.of()));
    }

    private List<Cell> cost(CaseCostResult c) {
        return List.of(
                Cell.words(run.names().device(c.device())),
                c.cost().map(this::money).map(Cell::words).orElseGet(() -> cells.word("costs.not-supplied")),
                joined(c, l -> Stream.of(l.item() + ", " + l.priceText())),
                joined(c, l -> Stream.of(l.givenBy() + ", " + l.on())),
                joined(c, l -> l.notIncluded().stream()));
    }

    private String money(double amount) {
        int decimals = run.dossier().costs().stream()
                .flatMap(c -> c.price().value().price().stream())
                .map(Price::amount)
                .mapToInt(a -> a.decimals())
                .max()
                .orElse(0);
        return run.figures().number(amount, decimals) + "\u00a0"
                + results.costs().currency().orElse("");
    }

    private Cell joined(CaseCostResult c, Function<CostLineResult, Stream<String>> text) {
        var said = results.costs().lines().stream()
                .filter(l -> l.device().equals(c.device()) || l.device().equals(Comparand.ALL_DEVICES))
                .flatMap(text)
                .distinct()
                .collect(Collectors.joining("; "));
        return said.isEmpty() ? cells.word("none") : Cell.words(said);
    }

    List<Block> changes() {
        var since = results.changes().since();
        if (since.isEmpty()) {
            return List.of(new Paragraph(run.words().say("brief.no-since"), Style.BODY));
        }
        var blocks = new ArrayList<Block>();
        blocks.add(Brief.small(run.words()
                .say(
                        results.changes().changes().isEmpty() ? "brief.nothing-changed" : "brief.changed",
                        "since",
                        since.get())));
        results.changes().changes().stream()
                .limit(MOST_CHANGES)
                .forEach(c -> blocks.add(new Paragraph(change(c), Style.POINT)));
        return blocks;
    }

    private String change(ChangeResult c) {
        return run.words()
                .say(
                        c.compared() == 0 ? "brief.change" : "brief.change-compared",
                        "on",
                        c.on(),
                        "what",
                        c.what(),
                        "before",
                        c.before(),
                        "after",
                        c.after(),
                        "cause",
                        c.cause(),
                        "n",
                        String.valueOf(c.compared()));
    }

    /** One paragraph: numbers as locators use them. */
    List<Block> sources() {
        return List.of(Brief.small(
                results.sources().stream().map(this::source).collect(Collectors.joining("; ")) + "."));
    }

    private String source(SourceResult s) {
        var record = run.library().source(s.id());
        return run.words()
                .say(
                        "brief.source",
                        "number",
                        String.valueOf(s.number()),
                        "first",
                        record.flatMap(Facts::first).orElse(s.id()),
                        "year",
                        record.flatMap(r -> r.reference().issued())
                                .map(d -> String.valueOf(d.value().earliest().getYear()))
                                .orElseGet(() -> run.words().say("not-reported")),
                        "kind",
                        s.kind().replace('-', ' ')
                                + s.revision().map(r -> " " + r).orElse(""),
                        "funding",
                        s.funding(),
                        "state",
                        s.state());
    }

    private static Optional<String> first(SourceRecord source) {
        var authors = source.reference().author();
        return authors.stream().findFirst().map(a -> a.text() + (authors.size() > 1 ? " et al." : ""));
    }
}
