package comparand.intake;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.diag.Suggest;
import comparand.document.form.FormTable;
import comparand.document.record.Entry;
import comparand.model.DataCell;
import comparand.model.FilledForm;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads a filled form, cell by cell, and takes its records. */
public final class FormTaking {

    private final FilledForm form;
    private final Scope scope;
    private final List<Diagnostic> findings = new ArrayList<>();

    private FormTaking(FilledForm form, Scope scope) {
        this.form = form;
        this.scope = scope;
    }

    /**
     * What the form says, over what the library says.
     *
     * @param existing the records of the library's sources, by name
     */
    public static Taken take(FilledForm form, Scope scope, Map<String, Entry.Fields> existing) {
        return new FormTaking(form, scope).take(existing);
    }

    /** Who filled the form, and on which day, as far as it says so. */
    public static Reader reader(FilledForm form) {
        return new Reader(start(form, IntakeForm.READER), start(form, IntakeForm.DAY));
    }

    private Taken take(Map<String, Entry.Fields> existing) {
        version();
        var reader = reader(form);
        var sources = new SourcePieces(scope);
        var values = ValuePieces.ofForm(scope, reader);
        var taking = new Taking(existing);
        for (var row : rows(IntakeForm.SOURCES, IntakeForm.sourceSlots(sources))) {
            taking.source(sources, row);
        }
        var points = new LinkedHashMap<String, Answers>();
        for (var row : rows(IntakeForm.POINTS, IntakeForm.pointSlots(values))) {
            row.text(ValuePieces.ID)
                    .ifPresentOrElse(
                            id -> points.put(id, row),
                            () -> findings.add(Diagnostic.stop(
                                    "form-point-unnamed",
                                    row.start(),
                                    "this reading does not say which value it is",
                                    "a reading without its value is lost",
                                    "write the id of the value on the sheet Values")));
        }
        var rows = rows(IntakeForm.VALUES, IntakeForm.valueSlots(values));
        if (!rows.isEmpty()
                && rows.stream()
                        .anyMatch(r -> !r.all().keySet().stream()
                                .anyMatch(s -> s.heading().equals("read by")))) {
            needsReader(reader);
        }
        for (var row : rows) {
            var more = row.text(ValuePieces.ID).flatMap(id -> Optional.ofNullable(points.remove(id)));
            taking.value(values, more.map(m -> joined(row, m)).orElse(row));
        }
        points.forEach((id, row) -> findings.add(Diagnostic.stop(
                "form-point-without-value",
                row.at(ValuePieces.ID),
                "there is no value `%s` on the sheet %s".formatted(id, IntakeForm.VALUES),
                "a reading without its value is lost",
                "give the value a row with this id, of the kind read-from-figure")));
        rows.stream()
                .collect(Collectors.groupingBy(r -> r.text(values.source())))
                .forEach((source, of) -> mixedSigns(of));
        findings.forEach(taking::refuse);
        return taking.taken();
    }

    private static Answers joined(Answers row, Answers more) {
        var all = new LinkedHashMap<>(row.all());
        more.all().forEach(all::putIfAbsent);
        return new Answers(all, row.start());
    }

    private void version() {
        var version = start(form, IntakeForm.FORM);
        if (!version.equals(IntakeForm.VERSION)) {
            var sheet = form.sheet(IntakeForm.START);
            findings.add(Diagnostic.stop(
                    "form-version",
                    sheet.isPresent() ? Span.cell(form.file(), IntakeForm.START, 1, 1) : Span.startOf(form.file()),
                    version.isEmpty()
                            ? "this workbook does not say that it is an intake form"
                            : "this is an intake form of version %s, and this tool reads version %s"
                                    .formatted(version, IntakeForm.VERSION),
                    "its cells may mean something else",
                    "write a new form with `comparand intake make`, and copy the rows over"));
        }
    }

    /** The answer behind a name on the first sheet; a day that was stored as such is written out. */
    private static String start(FilledForm form, String name) {
        return form.sheet(IntakeForm.START).stream()
                .flatMap(s -> s.rows().stream())
                .filter(r ->
                        r.cell(1).filter(c -> c.content().text().equals(name)).isPresent())
                .flatMap(r -> r.cell(2).stream())
                .map(c -> c.content().text().strip())
                .findFirst()
                .orElse("");
    }

    private void needsReader(Reader reader) {
        var at = form.sheet(IntakeForm.START).isPresent()
                ? Span.cell(form.file(), IntakeForm.START, 1, 2)
                : Span.startOf(form.file());
        if (reader.by().isEmpty()) {
            findings.add(Diagnostic.stop(
                    "form-reader-missing",
                    at,
                    "the sheet %s does not say who read the sources".formatted(IntakeForm.START),
                    "a value nobody read cannot be asked about",
                    "write initials beside `%s`".formatted(IntakeForm.READER)));
        }
        if (!reader.on().matches("\\d{4}-\\d{2}-\\d{2}")) {
            findings.add(Diagnostic.stop(
                    "form-day-missing",
                    at,
                    "the sheet %s does not say on which day the sources were read".formatted(IntakeForm.START),
                    "a correction that is published later must be seen to be later",
                    "write year-month-day beside `%s`, such as 2026-09-14".formatted(IntakeForm.DAY)));
        }
    }

    /** The rows of a sheet as answers, found by their headings wherever the columns stand. */
    private List<Answers> rows(String name, List<Slot> slots) {
        var sheet = form.sheet(name);
        if (sheet.isEmpty()) {
            findings.add(Diagnostic.stop(
                    "form-sheet-missing",
                    Span.startOf(form.file()),
                    "this workbook has no sheet `%s`".formatted(name),
                    "without it the form is not whole",
                    "copy the rows into a form of `comparand intake make`"));
            return List.of();
        }
        var columns = columns(sheet.get(), slots);
        var rows = new ArrayList<Answers>();
        for (var row : sheet.get().rows()) {
            if (row.number() >= FormTable.FIRST_ROW) {
                var answers = row(sheet.get(), row, columns);
                if (!answers.isEmpty()) {
                    rows.add(answers);
                }
            }
        }
        return rows;
    }

    private Map<Integer, Slot> columns(FilledForm.Sheet sheet, List<Slot> slots) {
        var headings = sheet.rows().stream()
                .filter(r -> r.number() == FormTable.HEADING_ROW)
                .flatMap(r -> r.cells().stream())
                .toList();
        var columns = new LinkedHashMap<Integer, Slot>();
        for (var heading : headings) {
            var text = heading.content().text();
            var at = Span.cell(form.file(), sheet.name(), FormTable.HEADING_ROW, heading.column());
            var slot = slots.stream().filter(s -> s.heading().equals(text)).findFirst();
            if (slot.isEmpty()) {
                findings.add(Diagnostic.stop(
                        "form-column-unknown",
                        at,
                        "the form has no column `%s`".formatted(text),
                        "what stands below it would be lost",
                        Suggest.instruction(
                                text, slots.stream().map(Slot::heading).toList())));
            } else if (columns.containsValue(slot.get())) {
                findings.add(Diagnostic.stop(
                        "form-column-twice",
                        at,
                        "the column `%s` stands here a second time".formatted(text),
                        "one of the two would be lost",
                        "keep one of them"));
            } else {
                columns.put(heading.column(), slot.get());
            }
        }
        if (columns.isEmpty()) {
            findings.add(Diagnostic.stop(
                    "form-headings-missing",
                    Span.cell(form.file(), sheet.name(), FormTable.HEADING_ROW, 1),
                    "row %d of this sheet holds no headings".formatted(FormTable.HEADING_ROW),
                    "without them nobody knows what the columns mean",
                    "copy the rows into a form of `comparand intake make`"));
        }
        return columns;
    }

    private Answers row(FilledForm.Sheet sheet, FilledForm.Row row, Map<Integer, Slot> columns) {
        var given = new LinkedHashMap<Slot, Answers.Answer>();
        for (var cell : row.cells()) {
            var at = form.at(sheet, row, cell.column());
            var slot = columns.get(cell.column());
            if (slot != null) {
                new CellText(findings).of(cell, slot, at).ifPresent(t -> given.put(slot, new Answers.Answer(t, at)));
            } else if (!(cell.content() instanceof DataCell.Blank)) {
                findings.add(Diagnostic.stop(
                        "form-cell-outside",
                        at,
                        "`%s` stands in a column without a heading"
                                .formatted(cell.content().text()),
                        "nobody knows what it means",
                        "move it into the column `remark`"));
            }
        }
        return new Answers(given, form.at(sheet, row, 1));
    }

    /** Both decimal signs in the numbers of one source: each is read, and the rarer ones are pointed out. */
    private void mixedSigns(List<Answers> rows) {
        for (char sign : new char[] {',', '.'}) {
            var typed = numbers(rows, sign);
            var others = numbers(rows, sign == ',' ? '.' : ',');
            if (!typed.isEmpty() && (typed.size() < others.size() || (typed.size() == others.size() && sign == ','))) {
                typed.forEach(a -> findings.add(Diagnostic.note(
                        "number-sign-mixed",
                        a.at(),
                        "`%s` has a decimal %s, and most numbers of this source a decimal %s"
                                .formatted(a.text(), sign == ',' ? "comma" : "point", sign == ',' ? "point" : "comma"),
                        "a sign that parts thousands looks the same",
                        "look whether it was meant so; it was read as a decimal sign")));
            }
        }
    }

    private static List<Answers.Answer> numbers(List<Answers> rows, char sign) {
        return rows.stream()
                .flatMap(r -> r.all().entrySet().stream())
                .filter(e -> e.getKey().kind() == Slot.Kind.NUMBER
                        && e.getValue().text().matches("[+\\-−]?\\d+\\" + sign + "\\d+"))
                .map(Map.Entry::getValue)
                .toList();
    }
}
