package comparand.read.workbook;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.model.UnreadableRows;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellReference;

/** What a survey of a sheet has to say to its author. */
final class SheetNotes {

    private static final String ALL_THE_SAME = "hidden cells are read like all others";

    private final WorkbookRows rows;
    private final SheetSurvey survey;
    private final List<WorkbookXml.Sheet> sheets;

    SheetNotes(WorkbookRows rows, SheetSurvey survey, List<WorkbookXml.Sheet> sheets) {
        this.rows = rows;
        this.survey = survey;
        this.sheets = sheets;
    }

    /**
     * Refuses what cannot be read as a table without guessing.
     *
     * @throws UnreadableRows at the first such cell
     */
    void requireTable() {
        if (rows.header().isEmpty()) {
            throw new UnreadableRows(
                    rows.heading(0),
                    "this row of the sheet holds no headings",
                    "write the number of the row with the headings under `header-row:`");
        }
        survey.mergedInTable().ifPresent(range -> {
            throw new UnreadableRows(
                    place(new CellAddress(range.getFirstRow(), range.getFirstColumn())),
                    "the cells %s are merged".formatted(range.formatAsString()),
                    "take the merging apart and fill each cell: only the first of merged cells holds the value");
        });
        survey.withoutResult().ifPresent(met -> {
            throw new UnreadableRows(
                    place(met.first()),
                    "this cell holds a formula whose result the workbook does not hold%s".formatted(andMore(met)),
                    "open the workbook in a spreadsheet program, let it compute, and save it");
        });
        rows.requireDistinctHeadings();
    }

    /** Notes, none of which stops anything. */
    List<Diagnostic> findings() {
        var findings = new ArrayList<Diagnostic>();
        for (var sheet : sheets) {
            if (sheet.hidden()) {
                findings.add(Diagnostic.note(
                        "sheet-hidden",
                        Span.cell(rows.path(), sheet.name(), 1, 1),
                        "the workbook has a hidden sheet `%s`".formatted(sheet.name()),
                        "corrected or older values may lie where nobody looks",
                        sheet.name().equals(rows.sheet())
                                ? "nothing to mend if this is the sheet that is meant"
                                : "look at it, and map it if it holds data"));
            }
        }
        survey.hiddenRows()
                .ifPresent(met -> findings.add(Diagnostic.note(
                        "rows-hidden",
                        place(met.first()),
                        "%s hidden or filtered away in the sheet"
                                .formatted(met.count() == 1 ? "this row is" : met.count() + " rows are"),
                        ALL_THE_SAME,
                        "list rows that are not to count under `dropped:` with a reason")));
        var columns = survey.hiddenColumnsOfTable();
        if (!columns.isEmpty()) {
            findings.add(Diagnostic.note(
                    "columns-hidden",
                    rows.heading(columns.get(0) - survey.firstColumn()),
                    "the sheet hides the columns "
                            + columns.stream()
                                    .map(CellReference::convertNumToColString)
                                    .collect(Collectors.joining(", ")),
                    ALL_THE_SAME,
                    "map such a column to `ignored` if it is not to count"));
        }
        survey.formulas()
                .ifPresent(met -> findings.add(Diagnostic.note(
                        "formulas-stored",
                        place(met.first()),
                        "%s, read as the workbook stored %s"
                                .formatted(
                                        met.count() == 1
                                                ? "this cell holds the result of a formula"
                                                : met.count() + " cells hold the results of formulas",
                                        met.count() == 1 ? "it" : "them"),
                        "a result stored before its inputs were corrected is an old one",
                        "open the workbook, let it compute, and save it, if inputs were changed by another program")));
        survey.textNumbers().forEach((column, met) -> {
            if (column >= survey.firstColumn()
                    && column < survey.firstColumn() + rows.header().size()) {
                findings.add(Diagnostic.note(
                        "numbers-as-text",
                        place(met.first()),
                        "in the column `%s`, %s a number stored as text"
                                .formatted(
                                        rows.header().get(column - survey.firstColumn()),
                                        met.count() == 1 ? "this cell holds" : met.count() + " cells hold"),
                        "such a number is read by the declared decimal sign, or not at all",
                        "nothing to mend for names and codes; store measured numbers as numbers"));
            }
        });
        return findings;
    }

    private static String andMore(SheetSurvey.Met met) {
        return met.count() > 1 ? ", and so do %d others".formatted(met.count() - 1) : "";
    }

    private Span place(CellAddress cell) {
        return Span.cell(rows.path(), rows.sheet(), cell.getRow() + 1, cell.getColumn() + 1);
    }
}
