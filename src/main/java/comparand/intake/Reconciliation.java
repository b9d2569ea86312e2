package comparand.intake;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.document.Edition;
import comparand.document.form.FormBook;
import comparand.document.form.FormList;
import comparand.document.form.FormList.Word;
import comparand.document.form.FormPage;
import comparand.document.form.FormTable;
import comparand.document.record.Entry;
import comparand.model.FilledForm;
import comparand.stat.CohenKappa;
import comparand.unit.Rounding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The workbook in which two readers settle what they read differently: only the differences, both entries, both quotes. */
public final class Reconciliation {

    static final String DIFFERENCES = "Differences";

    private static final List<String> HEADINGS = List.of(
            "source",
            "value",
            "field",
            "first reader",
            "second reader",
            "difference",
            "first quote",
            "second quote",
            "agreed value",
            "settled by",
            "settled on",
            "reason",
            "in words");

    private static final int AGREED = 8;
    private static final int BY = 9;
    private static final int ON = 10;
    private static final int REASON = 11;
    private static final int WORDS = 12;

    private static final FormList REASONS = new FormList(
            "reason",
            List.of(
                    new Word("misread", "the number or word was read wrongly"),
                    new Word("wrong row", "another row or column was read"),
                    new Word("different definition", "one of the readers took another definition"),
                    new Word("unit", "one of the readers took another unit"),
                    new Word("rounding", "one of the readers rounded"),
                    new Word("judgement", "the source allows both; say in words why this one")));

    private Reconciliation() {}

    /** The workbook with the differences of a second reading. */
    public static FormBook of(SecondReading reading, Edition edition) {
        var rows = new ArrayList<List<String>>();
        for (var value : reading.values()) {
            for (var pair : value.differences()) {
                rows.add(List.of(
                        value.source(),
                        value.id(),
                        pair.slot().heading(),
                        pair.first(),
                        pair.second(),
                        pair.verdict().text(),
                        value.firstQuote(),
                        value.secondQuote(),
                        "",
                        "",
                        "",
                        "",
                        ""));
            }
        }
        var columns = new ArrayList<FormTable.Column>();
        for (int c = 0; c < HEADINGS.size(); c++) {
            columns.add(column(c));
        }
        var agreement = reading.agreement().stream().map(Reconciliation::row).toList();
        return new FormBook(
                edition,
                List.of(start(edition, reading)),
                List.of(
                        new FormTable(
                                DIFFERENCES,
                                "One row for each difference. Look at the source together; write the agreed value, who settled it, when and"
                                        + " why. A value counts again when all of its rows are settled.",
                                columns,
                                rows,
                                1,
                                3),
                        new FormTable(
                                "Agreement",
                                "How often both readers gave the same, field by field; for fields of categories also beyond chance (Cohen's"
                                        + " kappa).",
                                List.of(plain("field", 34), plain("same", 8), plain("of", 8), plain("kappa", 22)),
                                agreement,
                                0,
                                1)),
                List.of(REASONS));
    }

    private static List<String> row(SecondReading.Agreement a) {
        return List.of(
                a.field(),
                String.valueOf(a.same()),
                String.valueOf(a.of()),
                a.kappa().map(Reconciliation::kappa).orElse(""));
    }

    /** κ to two decimals; in words where chance alone explains all. */
    public static String kappa(CohenKappa kappa) {
        return kappa.value().isPresent()
                ? Rounding.halfUp(kappa.value().getAsDouble(), 2).toPlainString()
                : "one category only";
    }

    private static FormTable.Column plain(String heading, int width) {
        return new FormTable.Column("", heading, "", width, Optional.empty(), true, Optional.empty());
    }

    private static FormTable.Column column(int c) {
        var heading = HEADINGS.get(c);
        return switch (c) {
            case AGREED ->
                asked(heading, "The value both agree on, written as in the form; not reported, or - for empty.", 22);
            case BY -> asked(heading, "Initials of who settled it, such as AB and CD.", 14);
            case ON -> asked(heading, "Year-month-day.", 12);
            case WORDS -> asked(heading, "In a few words why the agreed value is the right one.", 40);
            case REASON ->
                new FormTable.Column(
                        "To be settled",
                        heading,
                        "What went wrong.",
                        18,
                        Optional.of(REASONS.name()),
                        false,
                        Optional.empty());
            default ->
                new FormTable.Column(
                        "Both readings",
                        heading,
                        "",
                        heading.endsWith("quote") ? 40 : 18,
                        Optional.empty(),
                        true,
                        Optional.empty());
        };
    }

    private static FormTable.Column asked(String heading, String help, int width) {
        return new FormTable.Column("To be settled", heading, help, width, Optional.empty(), true, Optional.empty());
    }

    private static FormPage start(Edition edition, SecondReading reading) {
        var lines = new ArrayList<FormPage.Line>();
        lines.add(new FormPage.Title(edition.title()));
        edition.marks().forEach(m -> lines.add(new FormPage.Text(m)));
        lines.add(
                new FormPage.Text(
                        "Until a value is settled it is kept out of comparisons. The library is changed only by taking this workbook back."));
        reading.foundByOne().forEach(v -> lines.add(new FormPage.Text(v)));
        edition.cautions().forEach(c -> lines.add(new FormPage.Text(c)));
        return new FormPage(IntakeForm.START, lines);
    }

    /** The library's records with what was settled; values with a row that is not settled stay disputed. */
    public static Taken settled(FilledForm form, Scope scope, Map<String, Entry.Fields> existing) {
        return new Settling(form, scope, existing).taken();
    }

    /** Takes the rows of a workbook value by value. */
    private static final class Settling {
        private final FilledForm form;
        private final Map<String, Entry.Fields> existing;
        private final ValuePieces pieces;
        private final Taking taking;
        private final List<Diagnostic> findings = new ArrayList<>();

        Settling(FilledForm form, Scope scope, Map<String, Entry.Fields> existing) {
            this.form = form;
            this.existing = existing;
            this.pieces = new ValuePieces(scope, new ReadersPiece.Reader("", ""), ValuePieces.KnownSource.none());
            this.taking = new Taking(existing);
        }

        Taken taken() {
            var sheet = form.sheet(DIFFERENCES);
            if (sheet.isEmpty()) {
                taking.refuse(Diagnostic.stop(
                        "reconciliation-missing",
                        Span.startOf(form.file()),
                        "this workbook has no sheet `%s`".formatted(DIFFERENCES),
                        "nothing can be settled by it",
                        "give the workbook that `comparand second compare` wrote"));
                return taking.taken();
            }
            var byValue = new LinkedHashMap<String, List<FilledForm.Row>>();
            sheet.get().rows().stream()
                    .filter(r ->
                            r.number() >= FormTable.FIRST_ROW && !text(r, 1).isEmpty())
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
            var open = rows.stream().filter(r -> text(r, AGREED).isEmpty()).toList();
            if (!open.isEmpty()) {
                findings.add(Diagnostic.note(
                        "reconciliation-open",
                        form.at(sheet, open.get(0), AGREED + 1),
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
                var slot = pieces.all().stream()
                        .flatMap(p -> p.slots().stream())
                        .filter(s -> s.heading().equals(text(row, 2)))
                        .findFirst();
                if (slot.isEmpty()) {
                    findings.add(stop(
                            sheet,
                            row,
                            2,
                            "reconciliation-field-unknown",
                            "there is no field `%s`".formatted(text(row, 2)),
                            "leave the first columns as they were written"));
                } else if (text(row, AGREED).equals("-")) {
                    answers.remove(slot.get());
                } else if (!text(row, AGREED).equals(text(row, 3))) {
                    answers.put(slot.get(), new Answers.Answer(text(row, AGREED), form.at(sheet, row, AGREED + 1)));
                }
            }
            settled(sheet, rows, answers);
            taking.value(pieces, new Answers(answers, start));
        }

        private void settled(FilledForm.Sheet sheet, List<FilledForm.Row> rows, Map<Slot, Answers.Answer> answers) {
            var last = rows.get(rows.size() - 1);
            var parts = Map.of(
                    "settled by", text(last, BY), "settled on", text(last, ON), "settled because", reasons(rows));
            parts.forEach((heading, text) -> {
                int column = heading.equals("settled by") ? BY : heading.equals("settled on") ? ON : REASON;
                if (text.isEmpty()) {
                    findings.add(stop(
                            sheet,
                            last,
                            column,
                            "reconciliation-incomplete",
                            "a value is agreed here, and `%s` is empty".formatted(HEADINGS.get(column)),
                            "say who settled it, when, and why"));
                } else {
                    pieces.all().stream()
                            .flatMap(p -> p.slots().stream())
                            .filter(s -> s.heading().equals(heading))
                            .forEach(s -> answers.put(s, new Answers.Answer(text, form.at(sheet, last, column + 1))));
                }
            });
        }

        /** The reasons of all rows, each with its words. */
        private static String reasons(List<FilledForm.Row> rows) {
            return String.join(
                    "; ",
                    rows.stream()
                            .map(r -> text(r, REASON) + (text(r, WORDS).isEmpty() ? "" : ": " + text(r, WORDS)))
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
}
