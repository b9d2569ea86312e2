package comparand.read.workbook;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.flow.Outcome;
import comparand.model.DataCell;
import comparand.model.FilledForm;
import comparand.model.UnreadableRows;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Reads a workbook that was filled in, as it is stored: numbers as numbers, dates as dates. */
public final class FormReader {

    /** Far more than anybody fills in by hand. */
    private static final int MOST_ROWS = 20_000;

    private FormReader() {}

    /** The whole workbook, or the finding that it is none. */
    public static Outcome<FilledForm> read(Path path) {
        var name = path.getFileName();
        var file = name == null ? path.toString() : name.toString();
        if (!Files.isRegularFile(path)) {
            return Outcome.stopped(List.of(Diagnostic.stop(
                    "form-missing",
                    Span.startOf(file),
                    "there is no file `%s`".formatted(path),
                    "nothing was taken in",
                    "give the workbook that was filled in")));
        }
        try (var workbook = OpenWorkbook.open(path, file)) {
            var sheets = new ArrayList<FilledForm.Sheet>();
            for (var sheet : workbook.sheets()) {
                var rows = new Rows();
                workbook.read(sheet, rows);
                sheets.add(new FilledForm.Sheet(sheet.name(), rows.rows));
            }
            return Outcome.of(new FilledForm(file, sheets));
        } catch (UnreadableRows e) {
            return Outcome.stopped(List.of(
                    Diagnostic.stop("form-unreadable", e.place(), e.problem(), "nothing was taken in", e.fix())));
        }
    }

    private static final class Rows implements SheetVisitor {
        private final List<FilledForm.Row> rows = new ArrayList<>();
        private List<FilledForm.Cell> cells = new ArrayList<>();

        @Override
        public void cell(int row, int column, DataCell content, Source source) {
            if (!content.isBlank() || source != Source.TYPED) {
                cells.add(new FilledForm.Cell(column + 1, content, source != Source.TYPED));
            }
        }

        @Override
        public void rowEnds(int row, boolean hidden) {
            if (!cells.isEmpty()) {
                rows.add(new FilledForm.Row(row + 1, cells));
                cells = new ArrayList<>();
            }
            if (rows.size() == MOST_ROWS) {
                throw new OpenWorkbook.Enough();
            }
        }
    }
}
