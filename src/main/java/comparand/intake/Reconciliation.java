package comparand.intake;

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
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The workbook in which two readers settle what they read differently: only the differences, both entries, both quotes. */
public final class Reconciliation {

    static final String DIFFERENCES = "Differences";

    static final List<String> HEADINGS = List.of(
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

    static final int AGREED = 8;
    static final int BY = 9;
    static final int ON = 10;
    static final int REASON = 11;
    static final int WORDS = 12;

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
}
