package comparand.intake;

import comparand.diag.Span;
import comparand.document.Edition;
import comparand.document.form.FormBook;
import comparand.document.form.FormList;
import comparand.document.form.FormPage;
import comparand.document.form.FormTable;
import comparand.document.record.Entry;
import comparand.metric.Condition;
import comparand.metric.ConditionUse;
import comparand.metric.Metric;
import comparand.metric.Role;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The workbook that is filled in: empty, or with what the library holds of some sources. */
public final class IntakeForm {

    /** Written into every form; another version asks for other slots. */
    public static final String VERSION = "1";

    static final String START = "Start";
    static final String SOURCES = "Sources";
    static final String VALUES = "Values";
    static final String POINTS = "Figure points";
    static final String READER = "reader's initials";
    static final String DAY = "day of reading";
    static final String FORM = "form version";

    private static final int READY_ROWS = 200;
    private static final int READY_SOURCES = 20;
    private static final String NEEDED = "Needed";

    private final Scope scope;
    private final SourcePieces sources;
    private final ValuePieces values;
    private final int rowsReady;
    private final Map<String, FormList> lists = new LinkedHashMap<>();

    private IntakeForm(Scope scope, int rowsReady) {
        this.scope = scope;
        this.rowsReady = rowsReady;
        this.sources = new SourcePieces(scope);
        this.values = new ValuePieces(scope, new ReadersPiece.Reader("", ""), (s, c) -> false);
    }

    /**
     * A form.
     *
     * @param filled records of sources that are written into it
     */
    public static FormBook of(Scope scope, List<Entry.Fields> filled, Edition edition) {
        int filledRows = filled.stream()
                .mapToInt(s -> s.get(SourcePieces.VALUES).orElse(s) instanceof Entry.Items i
                        ? i.list().size()
                        : 0)
                .sum();
        return new IntakeForm(scope, filledRows + READY_ROWS).book(filled, edition);
    }

    private FormBook book(List<Entry.Fields> filled, Edition edition) {
        var tables = List.of(
                table(
                        SOURCES,
                        "One row for each source. Columns in colour still have to be filled once a row is begun.",
                        sourceSlots(sources),
                        filled.stream().map(s -> cells(s, sources.all())).toList(),
                        READY_SOURCES,
                        1),
                table(
                        VALUES,
                        "One row for each number. Cells in colour still have to be filled for the metric of the row; where the source does"
                                + " not say, choose or write: not reported.",
                        valueSlots(values),
                        rows(filled, false),
                        READY_ROWS,
                        4),
                table(
                        POINTS,
                        "One row for each value that is read from a figure, under the name it has on the sheet Values.",
                        pointSlots(values),
                        rows(filled, true),
                        READY_SOURCES,
                        1));
        return new FormBook(
                edition,
                List.of(start(edition), check()),
                Stream.concat(tables.stream(), Stream.of(needed())).toList(),
                List.copyOf(lists.values()));
    }

    static List<Slot> sourceSlots(SourcePieces pieces) {
        return slots(pieces.all().stream());
    }

    static List<Slot> valueSlots(ValuePieces pieces) {
        return Stream.concat(
                        Stream.of(ValuePieces.ID, pieces.source()),
                        slots(pieces.all().stream().filter(p -> !(p instanceof AxisPiece))).stream())
                .distinct()
                .toList();
    }

    static List<Slot> pointSlots(ValuePieces pieces) {
        return Stream.concat(
                        Stream.of(ValuePieces.ID),
                        slots(pieces.all().stream().filter(AxisPiece.class::isInstance)).stream())
                .toList();
    }

    private static List<Slot> slots(Stream<Piece> pieces) {
        return pieces.flatMap(p -> p.slots().stream()).toList();
    }

    private static Map<Slot, String> cells(Entry.Fields record, List<Piece> pieces) {
        var cells = new LinkedHashMap<Slot, String>();
        pieces.forEach(p -> p.read(record, cells));
        return cells;
    }

    private List<Map<Slot, String>> rows(List<Entry.Fields> filled, boolean points) {
        var rows = new ArrayList<Map<Slot, String>>();
        for (var source : filled) {
            if (!(source.get(SourcePieces.VALUES).orElse(source) instanceof Entry.Items items)) {
                continue;
            }
            for (var item : items.list()) {
                if (item instanceof Entry.Fields value
                        && (!points || value.get(FigurePiece.READ_FROM_FIGURE).isPresent())) {
                    var cells = cells(value, values.all());
                    source.text("source").ifPresent(s -> cells.put(values.source(), s));
                    rows.add(cells);
                }
            }
        }
        return rows;
    }

    private FormTable table(
            String name, String lead, List<Slot> slots, List<Map<Slot, String>> filled, int ready, int fixed) {
        var columns = slots.stream().map(s -> column(name, s, slots)).toList();
        var rows = filled.stream()
                .map(r -> slots.stream().map(s -> r.getOrDefault(s, "")).toList())
                .toList();
        return new FormTable(name, lead, columns, rows, ready, fixed);
    }

    private FormTable.Column column(String sheet, Slot slot, List<Slot> slots) {
        Optional<String> list = slot.words().isEmpty() ? Optional.empty() : Optional.of(listOf(slot));
        return new FormTable.Column(
                slot.group(),
                slot.heading(),
                slot.help(),
                width(slot),
                list,
                slot.kind() == Slot.Kind.SUGGESTED,
                wanted(sheet, slot, slots));
    }

    private String listOf(Slot slot) {
        // slots with the same words share a list
        return lists.values().stream()
                .filter(l -> l.words().equals(slot.words()))
                .findFirst()
                .orElseGet(() -> {
                    var list = new FormList(slot.heading(), slot.words());
                    lists.put(slot.heading(), list);
                    return list;
                })
                .name();
    }

    private static int width(Slot slot) {
        return switch (slot.kind()) {
            case TEXT ->
                slot.help().contains("verbatim")
                                || slot.heading().equals("quote")
                                || slot.heading().equals("title")
                        ? 44
                        : 16;
            case WORD, SUGGESTED -> slot.heading().endsWith("unit") ? 9 : 18;
            case NUMBER -> 12;
            case DATE -> 12;
        };
    }

    /** What a row needs: always, or by the metric that is chosen in it. */
    private Optional<String> wanted(String sheet, Slot slot, List<Slot> slots) {
        if (sheet.equals(SOURCES)) {
            return always(sources.all(), slot) ? Optional.of(empty(slot, slots, SourcePieces.ID)) : Optional.empty();
        }
        if (!sheet.equals(VALUES)) {
            return Optional.empty();
        }
        if (slot.equals(values.source()) || always(values.all(), slot)) {
            return Optional.of(empty(slot, slots, values.metric()));
        }
        int column = deciding().indexOf(slot);
        return column < 0
                ? Optional.empty()
                : Optional.of("AND(%s,IFERROR(INDEX(%s!$A$%d:$%s$%d,MATCH(%s,%s!$A$%d:$A$%d,0),%d)=\"x\",FALSE))"
                        .formatted(
                                empty(slot, slots, values.metric()),
                                NEEDED,
                                FormTable.FIRST_ROW,
                                letters(deciding().size() + 1),
                                FormTable.FIRST_ROW + scope.metrics().size() - 1,
                                reference(values.metric(), slots),
                                NEEDED,
                                FormTable.FIRST_ROW,
                                FormTable.FIRST_ROW + scope.metrics().size() - 1,
                                column + 2));
    }

    private static boolean always(List<Piece> pieces, Slot slot) {
        return pieces.stream()
                        .anyMatch(p -> p instanceof TextPiece t
                                && t.needed()
                                && t.slot().equals(slot))
                || slot.equals(FigurePiece.KIND);
    }

    private static String empty(Slot slot, List<Slot> slots, Slot begun) {
        return "AND(%s<>\"\",%s=\"\")".formatted(reference(begun, slots), reference(slot, slots));
    }

    private static String reference(Slot slot, List<Slot> slots) {
        return "$" + letters(slots.indexOf(slot) + 1) + "{row}";
    }

    private static String letters(int column) {
        return Span.cell("", "sheet", 1, column).cellName().replaceAll("\\d", "");
    }

    /** Slots that some metric needs: conditions that decide, and respects of its definition. */
    private List<Slot> deciding() {
        return Stream.concat(
                        values.all().stream()
                                .filter(AspectPiece.class::isInstance)
                                .map(p -> p.slots().get(0)),
                        values.conditions().keySet().stream())
                .toList();
    }

    /** Which metric needs what, in sight, because the colours of the sheet Values follow it. */
    private FormTable needed() {
        var slots = deciding();
        var columns = new ArrayList<FormTable.Column>();
        columns.add(plain("metric", 26));
        slots.forEach(s -> columns.add(plain(s.heading(), 14)));
        var rows = scope.metrics().stream()
                .map(m -> Stream.concat(Stream.of(m.id()), slots.stream().map(s -> isNeeded(m, s) ? "x" : ""))
                        .toList())
                .toList();
        return new FormTable(
                NEEDED,
                "What decides whether two values of a metric may be compared: x must be stated, for the value or for its whole source, if"
                        + " only as not reported.",
                columns,
                rows,
                0,
                1);
    }

    private static FormTable.Column plain(String heading, int width) {
        return new FormTable.Column("", heading, "", width, Optional.empty(), true, Optional.empty());
    }

    private boolean isNeeded(Metric metric, Slot slot) {
        Optional<Role> role = Optional.ofNullable(values.conditions().get(slot))
                .map(Condition::id)
                .flatMap(metric::condition)
                .map(ConditionUse::role);
        return role.or(() -> values.all().stream()
                        .flatMap(p -> p instanceof AspectPiece a && a.slot().equals(slot)
                                ? metric.definition().stream()
                                        .filter(d -> a.path().endsWith("/" + d.id()))
                                        .map(d -> d.role())
                                : Stream.empty())
                        .findFirst())
                .filter(Role::asksForReport)
                .isPresent();
    }

    private static FormPage start(Edition edition) {
        return new FormPage(
                START,
                Stream.of(
                                Stream.of(new FormPage.Title(edition.title())),
                                edition.marks().stream().map(FormPage.Text::new),
                                Stream.of(
                                        "1. Write your initials and the day below.",
                                        "2. Give each source a row on the sheet Sources, unless it is on the list there already.",
                                        "3. Give each number a row on the sheet Values: as printed, with its unit, place and quote.",
                                        "4. Where a source does not say, choose or write: not reported. An empty cell is an error, not an"
                                                + " answer.",
                                        "5. Send the file back as it is. Nothing in it is changed by whoever takes it in; what has to be"
                                                + " mended comes back as a list of cells."),
                                Stream.of(
                                        new FormPage.Question(READER, "", "Two or three letters."),
                                        new FormPage.Question(DAY, "", "Year-month-day, such as 2026-09-14."),
                                        new FormPage.Question(FORM, VERSION, "Leave as it is.")),
                                edition.cautions().stream().map(FormPage.Text::new))
                        .flatMap(s -> s.map(l -> l instanceof String t ? new FormPage.Text(t) : (FormPage.Line) l))
                        .collect(Collectors.toList()));
    }

    /** Counts that the workbook keeps by itself. */
    private FormPage check() {
        var slots = valueSlots(values);
        var metric = range(values.metric(), slots);
        return new FormPage(
                "Check",
                List.of(
                        new FormPage.Title("What is still missing on the sheet Values"),
                        new FormPage.Count(
                                "rows begun", "COUNTIF(" + metric + ",\"?*\")", "as many as there are numbers"),
                        missing("rows without a source", values.source(), slots),
                        missing("rows without a device", values.device(), slots),
                        missing("rows without the text as printed", named("as printed", slots), slots),
                        missing("rows without a kind of figure", FigurePiece.KIND, slots),
                        missing("rows without a quote", named("quote", slots), slots),
                        new FormPage.Count(
                                "rows without a place",
                                "SUMPRODUCT((%s<>\"\")*(%s=\"\")*(%s=\"\")*(%s=\"\")*(%s=\"\"))"
                                        .formatted(
                                                metric,
                                                range(named("page", slots), slots),
                                                range(named("table", slots), slots),
                                                range(named("figure", slots), slots),
                                                range(named("section", slots), slots)),
                                "0"),
                        new FormPage.Count(
                                "numbers without a unit (a ratio has none)",
                                "SUMPRODUCT((%s<>\"\")*(%s=\"\"))"
                                        .formatted(
                                                range(named("number", slots), slots),
                                                range(named("unit", slots), slots)),
                                "only ratios and counts")));
    }

    private FormPage.Count missing(String name, Slot slot, List<Slot> slots) {
        return new FormPage.Count(
                name,
                "SUMPRODUCT((%s<>\"\")*(%s=\"\"))".formatted(range(values.metric(), slots), range(slot, slots)),
                "0");
    }

    private static Slot named(String heading, List<Slot> slots) {
        return slots.stream()
                .filter(s -> s.heading().equals(heading))
                .findFirst()
                .orElseThrow();
    }

    private String range(Slot slot, List<Slot> slots) {
        var letters = letters(slots.indexOf(slot) + 1);
        return "%s!$%s$%d:$%s$%d"
                .formatted(VALUES, letters, FormTable.FIRST_ROW, letters, FormTable.FIRST_ROW + rowsReady - 1);
    }
}
