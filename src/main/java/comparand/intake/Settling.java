package comparand.intake;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.document.form.FormTable;
import comparand.document.record.Entry;
import comparand.model.FilledForm;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Takes the rows of a workbook value by value. */
final class Settling {
    private final FilledForm form;
    private final Map<String, Entry.Fields> existing;
    private final ValuePieces pieces;
    private final Taking taking;
    private final List<Diagnostic> findings = new ArrayList<>();

    Settling(FilledForm form, Scope scope, Map<String, Entry.Fields> existing) {
        this.form = form;
        this.existing = existing;
        this.pieces = ValuePieces.ofForm(scope, Reader.NOBODY);
        this.taking = new Taking(existing);
    }

    Taken taken() {
        var sheet = form.sheet(Reconciliation.DIFFERENCES);
        if (sheet.isEmpty()) {
            taking.refuse(Diagnostic.stop(
                    "reconciliation-missing",
                    Span.startOf(form.file()),
                    "this workbook has no sheet `%s`".formatted(Reconciliation.DIFFERENCES),
                    "nothing can be settled by it",
                    "give the workbook that `comparand second compare` wrote"));
            return taking.taken();
        }
        var byValue = new LinkedHashMap<String, List<FilledForm.Row>>();
        sheet.get().rows().stream()
                .filter(r -> r.number() >= FormTable.FIRST_ROW && !text(r, 1).isEmpty())
                .forEach(r -> byValue.computeIfAbsent(text(r, 0) + "/" + text(r, 1), k -> new ArrayList<>())
                        .add(r));
        byValue.values().forEach(rows -> value(sheet.get(), rows));
        findings.forEach(taking::refuse);
        return taking.taken();
    }

    private void value(FilledForm.Sheet sheet, List<FilledForm.Row> rows) {
        var source = text(rows.get(0), 0);
        var id = text(rows.get(0), 1);
        var record = Optional.ofNullable(existing.get(source)).stream()
                .flatMap(s -> Records.values(s).stream())
                .filter(v -> v.text(Entry.Fields.ID).filter(id::equals).isPresent())
                .findFirst();
        if (record.isEmpty()) {
            findings.add(stop(
                    sheet,
                    rows.get(0),
                    1,
                    "reconciliation-value-unknown",
                    "there is no value `%s` in `%s`".formatted(id, source),
                    "write the names as the library has them"));
            return;
        }
        var open = rows.stream()
                .filter(r -> text(r, Reconciliation.AGREED).isEmpty())
                .toList();
        if (!open.isEmpty()) {
            findings.add(Diagnostic.note(
                    "reconciliation-open",
                    form.at(sheet, open.get(0), Reconciliation.AGREED + 1),
                    "the value `%s` has %d rows that are not settled".formatted(id, open.size()),
                    "until then it is kept out of comparisons",
                    "write the agreed value into each of its rows"));
            return;
        }
        var answers = new LinkedHashMap<Slot, Answers.Answer>();
        var start = form.at(sheet, rows.get(0), 1);
        Records.cells(pieces.all(), record.get())
                .forEach((s, t) -> answers.put(s, new Answers.Answer(t.strip(), start)));
        answers.put(pieces.source(), new Answers.Answer(source, start));
        for (var row : rows) {
            var slot = slot(text(row, 2));
            if (slot.isEmpty()) {
                findings.add(stop(
                        sheet,
                        row,
                        2,
                        "reconciliation-field-unknown",
                        "there is no field `%s`".formatted(text(row, 2)),
                        "leave the first columns as they were written"));
            } else if (text(row, Reconciliation.AGREED).equals("-")) {
                answers.remove(slot.get());
            } else if (!text(row, Reconciliation.AGREED).equals(text(row, 3))) {
                answers.put(
                        slot.get(),
                        new Answers.Answer(
                                text(row, Reconciliation.AGREED), form.at(sheet, row, Reconciliation.AGREED + 1)));
            }
        }
        settled(sheet, rows, answers);
        taking.value(pieces, new Answers(answers, start));
    }

    private void settled(FilledForm.Sheet sheet, List<FilledForm.Row> rows, Map<Slot, Answers.Answer> answers) {
        var last = rows.get(rows.size() - 1);
        settled("settled by", Reconciliation.BY, text(last, Reconciliation.BY), sheet, last, answers);
        settled("settled on", Reconciliation.ON, text(last, Reconciliation.ON), sheet, last, answers);
        settled("settled because", Reconciliation.REASON, reasons(rows), sheet, last, answers);
    }

    private void settled(
            String heading,
            int column,
            String text,
            FilledForm.Sheet sheet,
            FilledForm.Row row,
            Map<Slot, Answers.Answer> answers) {
        if (text.isEmpty()) {
            findings.add(stop(
                    sheet,
                    row,
                    column,
                    "reconciliation-incomplete",
                    "a value is agreed here, and `%s` is empty".formatted(Reconciliation.HEADINGS.get(column)),
                    "say who settled it, when, and why"));
            return;
        }
        slot(heading).ifPresent(s -> answers.put(s, new Answers.Answer(text, form.at(sheet, row, column + 1))));
    }

    private Optional<Slot> slot(String heading) {
        return pieces.all().stream()
                .flatMap(p -> p.slots().stream())
                .filter(s -> s.heading().equals(heading))
                .findFirst();
    }

    /** The reasons of all rows, each with its words. */
    private static String reasons(List<FilledForm.Row> rows) {
        return String.join(
                "; ",
                rows.stream()
                        .map(r -> text(r, Reconciliation.REASON)
                                + (text(r, Reconciliation.WORDS).isEmpty() ? "" : ": " + text(r, Reconciliation.WORDS)))
                        .filter(t -> !t.isEmpty())
                        .distinct()
                        .toList());
    }

    private Diagnostic stop(
            FilledForm.Sheet sheet, FilledForm.Row row, int column, String code, String message, String fix) {
        return Diagnostic.stop(
                code,
                form.at(sheet, row, column + 1),
                message,
                "what was settled has to be traced to who settled it",
                fix);
    }

    private static String text(FilledForm.Row row, int column) {
        return row.cell(column + 1).map(c -> c.content().text().strip()).orElse("");
    }
}
