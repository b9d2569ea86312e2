package comparand.intake;

import comparand.diag.Span;
import comparand.document.form.FormPage;
import comparand.document.form.FormTable;
import comparand.metric.Condition;
import comparand.metric.ConditionUse;
import comparand.metric.Metric;
import comparand.metric.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a row of the form needs before it says enough: as formulas of the workbook, so that the person sees it at once. */
final class FormNeeds {

    private static final String NEEDED = "Needed";

    private final Scope scope;
    private final SourcePieces sources;
    private final ValuePieces values;

    FormNeeds(Scope scope, SourcePieces sources, ValuePieces values) {
        this.scope = scope;
        this.sources = sources;
        this.values = values;
    }

    /** What a row needs: always, or by the metric that is chosen in it. */
    Optional<String> wanted(String sheet, Slot slot, List<Slot> slots) {
        if (sheet.equals(IntakeForm.SOURCES)) {
            return always(sources.all(), slot) ? Optional.of(empty(slot, slots, SourcePieces.ID)) : Optional.empty();
        }
        if (!sheet.equals(IntakeForm.VALUES)) {
            return Optional.empty();
        }
        if (slot.equals(values.source()) || always(values.all(), slot)) {
            return Optional.of(empty(slot, slots, values.metric()));
        }
        int column = deciding().indexOf(slot);
        if (column < 0) {
            return Optional.empty();
        }
        var isEmpty = empty(slot, slots, values.metric());
        var decides = "IFERROR(INDEX(%s!$A$%d:$%s$%d,MATCH(%s,%s!$A$%d:$A$%d,0),%d)=\"x\",FALSE)"
                .formatted(
                        NEEDED,
                        FormTable.FIRST_ROW,
                        letters(deciding().size() + 1),
                        lastNeeded(),
                        reference(values.metric(), slots),
                        NEEDED,
                        FormTable.FIRST_ROW,
                        lastNeeded(),
                        column + 2);
        return Optional.of("AND(%s,%s,%s)".formatted(isEmpty, decides, notSaidBySource(slot, slots)));
    }

    private int lastNeeded() {
        return FormTable.FIRST_ROW + scope.metrics().size() - 1;
    }

    /** What the source says for all its values need not be said for one of them. */
    private String notSaidBySource(Slot slot, List<Slot> slots) {
        var ofSource = IntakeForm.sourceSlots(sources);
        int at = ofSource.stream().map(Slot::heading).toList().indexOf(slot.heading());
        if (at < 0 || !values.conditions().containsKey(slot)) {
            return "TRUE";
        }
        int last = FormTable.FIRST_ROW + IntakeForm.MOST_SOURCES - 1;
        return "IFERROR(INDEX(%1$s!$%2$s$%3$d:$%2$s$%4$d,MATCH(%5$s,%1$s!$A$%3$d:$A$%4$d,0))=\"\",TRUE)"
                .formatted(
                        IntakeForm.SOURCES,
                        letters(at + 1),
                        FormTable.FIRST_ROW,
                        last,
                        reference(values.source(), slots));
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
    FormTable table() {
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

    /** Counts that the workbook keeps by itself. */
    FormPage check(int rowsReady) {
        var slots = IntakeForm.valueSlots(values);
        var metric = range(values.metric(), slots, rowsReady);
        return new FormPage(
                "Check",
                List.of(
                        new FormPage.Title("What is still missing on the sheet Values"),
                        new FormPage.Count(
                                "rows begun", "COUNTIF(" + metric + ",\"?*\")", "as many as there are numbers"),
                        missing("rows without a source", values.source(), slots, rowsReady),
                        missing("rows without a device", values.device(), slots, rowsReady),
                        missing("rows without the text as printed", named("as printed", slots), slots, rowsReady),
                        missing("rows without a kind of figure", FigurePiece.KIND, slots, rowsReady),
                        missing("rows without a quote", named("quote", slots), slots, rowsReady),
                        new FormPage.Count(
                                "rows without a place",
                                "SUMPRODUCT((%s<>\"\")*(%s=\"\")*(%s=\"\")*(%s=\"\")*(%s=\"\"))"
                                        .formatted(
                                                metric,
                                                range(named("page", slots), slots, rowsReady),
                                                range(named("table", slots), slots, rowsReady),
                                                range(named("figure", slots), slots, rowsReady),
                                                range(named("section", slots), slots, rowsReady)),
                                "0"),
                        new FormPage.Count(
                                "numbers without a unit (a ratio has none)",
                                "SUMPRODUCT((%s<>\"\")*(%s=\"\"))"
                                        .formatted(
                                                range(named("number", slots), slots, rowsReady),
                                                range(named("unit", slots), slots, rowsReady)),
                                "only ratios and counts")));
    }

    private FormPage.Count missing(String name, Slot slot, List<Slot> slots, int rows) {
        return new FormPage.Count(
                name,
                "SUMPRODUCT((%s<>\"\")*(%s=\"\"))"
                        .formatted(range(values.metric(), slots, rows), range(slot, slots, rows)),
                "0");
    }

    private static Slot named(String heading, List<Slot> slots) {
        return slots.stream()
                .filter(s -> s.heading().equals(heading))
                .findFirst()
                .orElseThrow();
    }

    private static String range(Slot slot, List<Slot> slots, int rows) {
        var letters = letters(slots.indexOf(slot) + 1);
        return "%s!$%s$%d:$%s$%d"
                .formatted(IntakeForm.VALUES, letters, FormTable.FIRST_ROW, letters, FormTable.FIRST_ROW + rows - 1);
    }
}
