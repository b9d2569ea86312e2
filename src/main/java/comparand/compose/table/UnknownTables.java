package comparand.compose.table;

import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.document.Block;
import comparand.document.Block.Heading;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Paragraph.Style;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.Section;
import comparand.document.result.UnknownResult;
import comparand.document.result.UnknownResult.AimResult;
import comparand.document.result.UnknownResult.NeededResult;
import comparand.document.result.UnknownResult.PlanResult;
import comparand.unit.Rounding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is not known: a chapter of the evidence table, and a sheet that has all numbers of the plans. */
public final class UnknownTables {

    private static final int ON_PAPER = 7;
    private static final int SPREAD_DIGITS = 2;
    private static final List<String> SDS = List.of("at-hand", "smaller", "upper");

    private final Run run;
    private final Cells cells;
    private final List<UnknownResult> unknowns;

    public UnknownTables(Run run, Cells cells, List<UnknownResult> unknowns) {
        this.run = run;
        this.cells = cells;
        this.unknowns = unknowns;
    }

    /** Tables by what kind of gap it is, in the order of rank. */
    public Section section() {
        var blocks = new ArrayList<Block>();
        if (unknowns.isEmpty()) {
            blocks.add(new Paragraph(say("gaps.none"), Style.BODY));
        } else {
            blocks.add(new Paragraph(say("gaps.lead"), Style.BODY));
            byHeading().forEach((key, list) -> {
                blocks.add(new Heading(say("gap." + key)));
                blocks.add(table(key, list));
            });
        }
        return new Section(say("table.unknown"), say("table.unknown"), blocks);
    }

    private Map<String, List<UnknownResult>> byHeading() {
        var groups = new LinkedHashMap<String, List<UnknownResult>>();
        unknowns.forEach(
                u -> groups.computeIfAbsent(heading(u), h -> new ArrayList<>()).add(u));
        return groups;
    }

    private String heading(UnknownResult u) {
        boolean margin = u.metrics().stream().anyMatch(this::hasMargin);
        return switch (u.kind()) {
            case "open", "unmeasured" -> margin ? "margin" : "no-margin";
            case "unpublished", "paid-for" -> "sources";
            default -> u.kind();
        };
    }

    private boolean hasMargin(String metric) {
        return run.questions().entrySet().stream()
                .anyMatch(e -> e.getValue().id().equals(metric)
                        && e.getKey().margin().flatMap(m -> m.value().amount()).isPresent());
    }

    private Table table(String key, List<UnknownResult> list) {
        var columns = List.of(
                cells.name("col.unknown", 48),
                cells.text("col.device", 13),
                cells.text("col.matters", 42),
                cells.text("col.settles", 86),
                cells.text("col.who", 22));
        var rows = list.stream()
                .map(u -> List.<Cell>of(
                        Cell.words(u.what()),
                        Cell.words(u.device()),
                        Cell.words(u.matters()),
                        Cell.words(String.join(" ", u.settles())),
                        Cell.words(u.who())))
                .toList();
        return new Table("Unknown" + key.replace("-", ""), "", columns, rows, List.of());
    }

    /** One row for each aim of a plan, and one for each unknown without. */
    Table sheet() {
        var columns = List.of(
                cells.name("col.unknown", 44),
                cells.name("col.device", 12),
                cells.text("col.matters", 36),
                cells.text("col.settles", 50),
                cells.text("col.who", 22),
                cells.number("col.needed", 10),
                cells.text("col.units", 9),
                cells.text("col.groups", 19),
                cells.text("col.have", 11),
                cells.text("col.their-have", 12),
                cells.text("col.aim", 15),
                cells.number("col.amount", 15),
                cells.number("col.power", 9),
                cells.number("col.sd-plan", 10),
                cells.text("col.sd-from", 11),
                cells.number("col.sd-smaller", 13),
                cells.number("col.needed-smaller", 15),
                cells.number("col.sd-upper", 11),
                cells.number("col.needed-upper", 14),
                cells.text("col.reach", 18),
                cells.number("col.plan-tau", 12),
                cells.number("col.hospitals", 11),
                cells.text("col.gap", 13),
                cells.text("col.id", 130));
        var rows = new ArrayList<List<Cell>>();
        for (var u : unknowns) {
            u.plan()
                    .ifPresentOrElse(
                            p -> p.aims().forEach(a -> rows.add(row(u, a.sentence(), numbers(p, a)))),
                            () -> rows.add(row(u, String.join(" ", u.settles()), notPlanned())));
        }
        return new Table(
                "Unknowns",
                "",
                columns,
                rows.isEmpty() ? List.of(cells.nothing(columns.size())) : rows,
                List.of(),
                ON_PAPER);
    }

    private List<Cell> row(UnknownResult u, String settles, List<Cell> numbers) {
        var row = new ArrayList<Cell>(List.of(
                Cell.words(u.what()),
                Cell.words(u.device()),
                Cell.words(u.matters()),
                Cell.words(settles),
                Cell.words(u.who())));
        row.addAll(numbers);
        row.add(cells.term("gap-kind", u.kind()));
        row.add(Cell.verbatim(u.id()));
        return row;
    }

    private List<Cell> notPlanned() {
        var row = new ArrayList<Cell>();
        while (row.size() < 17) {
            row.add(cells.none());
        }
        return row;
    }

    private List<Cell> numbers(PlanResult p, AimResult aim) {
        var row = new ArrayList<Cell>();
        var by = SDS.stream()
                .map(which -> aim.needed().stream()
                        .filter(n -> n.which().equals(which))
                        .findFirst())
                .toList();
        row.add(needed(by.get(0)));
        row.add(cells.term("level", p.unit()));
        row.add(cells.term("groups", p.groups().replace('-', ' ')));
        row.add(count(p.ours()));
        row.add(count(p.theirs()));
        row.add(cells.term("aim", aim.kind().replace('-', ' ')));
        row.add(run.figures().cell(aim.amount(), Rounding.decimalsFor(aim.amount(), SPREAD_DIGITS), "", ""));
        row.add(aim.kind().equals("detect") ? run.figures().cell(p.power(), 2, "", "") : cells.none());
        row.add(sd(by.get(0)));
        row.add(cells.term("sd-from", p.sdFrom()));
        row.add(sd(by.get(1)));
        row.add(needed(by.get(1)));
        row.add(sd(by.get(2)));
        row.add(needed(by.get(2)));
        row.add(cells.term("reach", p.reach().replace('-', ' ')));
        row.add(p.tau()
                .map(t -> (Cell) run.figures().cell(t, Rounding.decimalsFor(t, SPREAD_DIGITS), "", ""))
                .orElseGet(cells::none));
        row.add(by.get(0).flatMap(NeededResult::hospitals).map(this::number).orElseGet(cells::none));
        return row;
    }

    private Cell number(int n) {
        return run.figures().cell(n, 0, "", "");
    }

    private Cell count(Optional<Integer> n) {
        return n.map(this::number).orElseGet(cells::none);
    }

    private Cell sd(Optional<NeededResult> needed) {
        return needed.map(n -> (Cell) run.figures().cell(n.sd(), Rounding.decimalsFor(n.sd(), SPREAD_DIGITS), "", ""))
                .orElseGet(cells::none);
    }

    private Cell needed(Optional<NeededResult> needed) {
        return needed.map(n -> n.n().map(count ->
                                (Cell) run.figures().cell(count, 0, n.kind().equals("more") ? ">\u00a0" : "", ""))
                        .orElseGet(() -> cells.word("needed.none")))
                .orElseGet(cells::none);
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
