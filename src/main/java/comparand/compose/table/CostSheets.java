package comparand.compose.table;

import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.result.CostsResult;
import comparand.document.result.CostsResult.CaseCostResult;
import comparand.document.result.CostsResult.CostLineResult;
import comparand.model.Comparand;
import comparand.model.library.CostRecord;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Costs item by item, and the cost of a case with each device. The sums are formulas by names of devices, so that they hold
 * when somebody sorts the items, changes a price, or writes one in that was not supplied.
 */
final class CostSheets {

    private static final String LINES = "Costs";
    private static final String CASES = "CaseCosts";
    private static final int DEVICE = 1;
    private static final int PRICE = 2;
    private static final int QUANTITY = 4;
    private static final int COST = 5;
    private static final int WITHOUT = 2;
    private static final int CASE_COST = 3;

    private final Run run;
    private final Cells cells;
    private final CostsResult costs;

    CostSheets(Run run, Cells cells, CostsResult costs) {
        this.run = run;
        this.cells = cells;
        this.costs = costs;
    }

    boolean areSupplied() {
        return !costs.lines().isEmpty();
    }

    Table items() {
        var columns = List.of(
                cells.name("col.item", 42),
                cells.text("col.for-device", 16),
                cells.number("col.price", 13),
                cells.text("col.currency", 10),
                cells.number("col.per-case", 11),
                cells.number("col.cost", 13),
                cells.text("col.given-by", 40),
                cells.text("col.given-on", 12),
                cells.text("col.not-included", 34));
        var rows = new ArrayList<List<Cell>>();
        for (int r = 0; r < costs.lines().size(); r++) {
            rows.add(item(costs.lines().get(r), r));
        }
        if (rows.isEmpty()) {
            var row = new ArrayList<>(cells.nothing(columns.size()));
            row.set(0, cells.word("costs.none"));
            rows.add(row);
        }
        return new Table(LINES, "", columns, rows, List.of());
    }

    private List<Cell> item(CostLineResult line, int row) {
        return List.of(
                Cell.words(line.item()),
                Cell.words(device(line.device())),
                money(line.price()),
                costs.currency().map(Cell::words).orElseGet(() -> notSupplied()),
                run.figures().cell(line.quantity(), decimalsOf(line), "", ""),
                FormulaDraft.of("IF(ISNUMBER(")
                        .cell(LINES, row, PRICE)
                        .sign("),")
                        .cell(LINES, row, PRICE)
                        .sign("*")
                        .cell(LINES, row, QUANTITY)
                        .sign(",")
                        .quoted(notSupplied().shown())
                        .sign(")")
                        .gives(money(line.cost()), decimals()),
                Cell.words(line.givenBy()),
                new Cell.Day(LocalDate.parse(line.on())),
                line.notIncluded().map(Cell::words).orElseGet(cells::none));
    }

    private String device(String id) {
        return id.equals(Comparand.ALL_DEVICES)
                ? run.words().say("all-devices")
                : run.names().device(id);
    }

    private Cell notSupplied() {
        return cells.word("costs.not-supplied");
    }

    private Cell money(Optional<Double> amount) {
        return amount.map(a -> (Cell) run.figures().cell(a, decimals(), "", "")).orElseGet(this::notSupplied);
    }

    /** As many as the price with the most. */
    private int decimals() {
        return run.dossier().costs().stream()
                .map(CostRecord::price)
                .flatMap(p -> p.value().price().stream())
                .mapToInt(p -> p.amount().decimals())
                .max()
                .orElse(0);
    }

    private int decimalsOf(CostLineResult line) {
        return run.dossier().costs().stream()
                .filter(c -> c.item().value().equals(line.item()))
                .mapToInt(c -> c.perCase().value().decimals())
                .max()
                .orElse(0);
    }

    Table perCase() {
        var columns = List.of(
                cells.name("col.device", 18),
                cells.number("col.items", 10),
                cells.number("col.without-price", 13),
                cells.number("col.cost", 13),
                cells.number("col.against-present", 16),
                cells.text("col.currency", 10),
                cells.text("col.not-supplied", 60),
                cells.text("col.not-included", 60));
        var rows = new ArrayList<List<Cell>>();
        for (int r = 0; r < costs.perCase().size(); r++) {
            rows.add(caseCost(costs.perCase().get(r), r));
        }
        return new Table(CASES, "", columns, rows, List.of());
    }

    private List<Cell> caseCost(CaseCostResult c, int row) {
        int lines = costs.lines().size();
        var all = run.words().say("all-devices");
        var missing = notSupplied().shown();
        int present = costs.perCase().stream()
                .map(CaseCostResult::device)
                .toList()
                .indexOf(run.dossier().presentDevice().value());
        return List.of(
                Cell.words(run.names().device(c.device())),
                counted("", row, lines, all).gives(run.figures().cell(c.items(), 0, "", ""), 0),
                counted(missing, row, lines, all).gives(run.figures().cell(c.withoutPrice(), 0, "", ""), 0),
                FormulaDraft.of("IF(AND(COUNTIFS(")
                        .column(LINES, lines, DEVICE)
                        .sign(",")
                        .cell(CASES, row, 0)
                        .sign(")>0,")
                        .cell(CASES, row, WITHOUT)
                        .sign("=0),SUMIFS(")
                        .column(LINES, lines, COST)
                        .sign(",")
                        .column(LINES, lines, DEVICE)
                        .sign(",")
                        .cell(CASES, row, 0)
                        .sign(")+SUMIFS(")
                        .column(LINES, lines, COST)
                        .sign(",")
                        .column(LINES, lines, DEVICE)
                        .sign(",")
                        .quoted(all)
                        .sign("),")
                        .quoted(missing)
                        .sign(")")
                        .gives(money(c.cost()), decimals()),
                FormulaDraft.of("IF(AND(ISNUMBER(")
                        .cell(CASES, row, CASE_COST)
                        .sign("),ISNUMBER(")
                        .cell(CASES, present, CASE_COST)
                        .sign(")),")
                        .cell(CASES, row, CASE_COST)
                        .sign("-")
                        .cell(CASES, present, CASE_COST)
                        .sign(",")
                        .quoted(missing)
                        .sign(")")
                        .gives(money(c.againstPresent()), decimals()),
                costs.currency().map(Cell::words).orElseGet(this::notSupplied),
                said(concerned(c).filter(l -> l.price().isEmpty()).map(CostLineResult::item)),
                said(concerned(c).flatMap(l -> l.notIncluded().stream())));
    }

    /** Items of a device and of all, or those of them whose price stands as words. */
    private FormulaDraft counted(String price, int row, int lines, String all) {
        var draft = new FormulaDraft();
        for (boolean own : List.of(true, false)) {
            draft.sign(own ? "COUNTIFS(" : "+COUNTIFS(")
                    .column(LINES, lines, DEVICE)
                    .sign(",");
            if (own) {
                draft.cell(CASES, row, 0);
            } else {
                draft.quoted(all);
            }
            if (!price.isEmpty()) {
                draft.sign(",").column(LINES, lines, PRICE).sign(",").quoted(price);
            }
            draft.sign(")");
        }
        return draft;
    }

    private Stream<CostLineResult> concerned(CaseCostResult c) {
        return costs.lines().stream()
                .filter(l -> l.device().equals(c.device()) || l.device().equals(Comparand.ALL_DEVICES));
    }

    private Cell said(Stream<String> texts) {
        var joined = texts.distinct().collect(Collectors.joining("; "));
        return joined.isEmpty() ? cells.word("none") : Cell.words(joined);
    }
}
