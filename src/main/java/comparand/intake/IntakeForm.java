package comparand.intake;

import comparand.document.Edition;
import comparand.document.form.FormBook;
import comparand.document.form.FormList;
import comparand.document.form.FormPage;
import comparand.document.form.FormTable;
import comparand.document.record.Entry;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

    /** In the order in which a person fills a row. */
    private static final List<String> GROUPS = List.of(
            "The value",
            "The figure",
            "Spread and number",
            "Place and quote",
            ConditionPiece.GROUP,
            "Definition",
            "Readers",
            "A letter",
            "Remark",
            "Settled and corrected");

    private static final int READY_ROWS = 200;
    private static final int READY_SOURCES = 20;
    /** As far as the colours of the sheet Values look. */
    static final int MOST_SOURCES = 500;

    private final FormNeeds needs;
    private final SourcePieces sources;
    private final ValuePieces values;
    private final int rowsReady;
    /** Whether only what names a value is filled in. */
    private final boolean names;

    private final Map<String, FormList> lists = new LinkedHashMap<>();

    private IntakeForm(Scope scope, int rowsReady, boolean names) {
        this.names = names;
        this.rowsReady = rowsReady;
        this.sources = new SourcePieces(scope);
        this.values = ValuePieces.ofForm(scope, Reader.NOBODY);
        this.needs = new FormNeeds(scope, sources, values);
    }

    /**
     * A form.
     *
     * @param known records of the library's sources; each has its row
     * @param filled those of them whose values are written into it
     */
    public static FormBook of(Scope scope, List<Entry.Fields> known, List<Entry.Fields> filled, Edition edition) {
        int filledRows = filled.stream()
                .mapToInt(s -> s.get(SourcePieces.VALUES).orElse(s) instanceof Entry.Items i
                        ? i.list().size()
                        : 0)
                .sum();
        return new IntakeForm(scope, filledRows + READY_ROWS, false).book(known, filled, edition);
    }

    /** A form for a second reader: of each value no more than its name, source, device and metric. */
    public static FormBook secondReader(Scope scope, List<Entry.Fields> records, Edition edition) {
        int rows = records.stream().mapToInt(s -> Records.values(s).size()).sum();
        return new IntakeForm(scope, rows + READY_ROWS, true).book(List.of(), records, edition);
    }

    private FormBook book(List<Entry.Fields> known, List<Entry.Fields> filled, Edition edition) {
        var tables = List.of(
                table(
                        SOURCES,
                        "One row for each source. Columns in colour still have to be filled once a row is begun.",
                        sourceSlots(sources),
                        known.stream().map(s -> Records.cells(sources.all(), s)).toList(),
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
                        names ? List.of() : rows(filled, true),
                        READY_SOURCES,
                        1));
        return new FormBook(
                edition,
                List.of(start(edition), needs.check(rowsReady)),
                Stream.concat(tables.stream(), Stream.of(needs.table())).toList(),
                List.copyOf(lists.values()));
    }

    static List<Slot> sourceSlots(SourcePieces pieces) {
        return slots(pieces.all().stream());
    }

    /** The slots of a row, what every row needs first; conditions that decide none of the metrics come last. */
    static List<Slot> valueSlots(ValuePieces pieces) {
        var onThisSheet =
                pieces.all().stream().filter(p -> !pieces.isReading(p)).toList();
        return Stream.concat(Stream.of(ValuePieces.ID, pieces.source()), slots(onThisSheet.stream()).stream())
                .distinct()
                .sorted(Comparator.comparingInt(s -> pieces.isFurther(s) ? GROUPS.size() : GROUPS.indexOf(s.group())))
                .toList();
    }

    static List<Slot> pointSlots(ValuePieces pieces) {
        return Stream.concat(
                        Stream.of(ValuePieces.ID), slots(pieces.all().stream().filter(pieces::isReading)).stream())
                .toList();
    }

    private static List<Slot> slots(Stream<Piece> pieces) {
        return pieces.flatMap(p -> p.slots().stream()).toList();
    }

    private List<Map<Slot, String>> rows(List<Entry.Fields> filled, boolean points) {
        var rows = new ArrayList<Map<Slot, String>>();
        for (var source : filled) {
            for (var value : Records.values(source)) {
                if (!points || value.get(FigurePiece.READ_FROM_FIGURE).isPresent()) {
                    var cells = Records.cells(values.all(), value);
                    source.text("source").ifPresent(s -> cells.put(values.source(), s));
                    if (names) {
                        cells.keySet()
                                .retainAll(Set.of(ValuePieces.ID, values.source(), values.device(), values.metric()));
                    }
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
                values.isFurther(slot) ? "Further conditions" : slot.group(),
                slot.heading(),
                slot.help(),
                width(slot),
                list,
                slot.kind() == Slot.Kind.SUGGESTED,
                needs.wanted(sheet, slot, slots));
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
            case WORD, SUGGESTED -> slot.heading().endsWith("unit") ? 13 : 18;
            case NUMBER -> 14;
            case DATE -> 12;
        };
    }

    private static FormPage start(Edition edition) {
        return new FormPage(
                START,
                Stream.of(
                                Stream.of(new FormPage.Title(edition.title())),
                                edition.marks().stream().map(FormPage.Text::new),
                                Stream.of(
                                        "1. Write your initials and the day below.",
                                        "2. Give each source a row on the sheet Sources, unless it has one there already.",
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
}
