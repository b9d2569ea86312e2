package comparand.read.workbook;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.diag.Suggest;
import comparand.model.DataCell;
import comparand.model.RowSource;
import comparand.model.UnreadableRows;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** The rows of one sheet of a workbook, streamed. */
public final class WorkbookRows implements RowSource {

    private final Path path;
    private final String file;
    private final String sheet;
    private final int headingRow;
    private final int firstColumn;
    private final List<String> header;

    private WorkbookRows(Path path, String file, String sheet, int headingRow, SheetSurvey survey) {
        this.path = path;
        this.file = file;
        this.sheet = sheet;
        this.headingRow = headingRow;
        this.firstColumn = survey.firstColumn();
        this.header = List.copyOf(survey.headings());
    }

    /**
     * A sheet as its mapping describes it.
     *
     * @param file as findings name it
     * @param sheet the declared sheet
     * @param at where the mapping speaks of the sheet, or of the file
     * @param headingRow counted from 1
     * @param findings what is worth a note is added to them
     * @throws UnreadableRows if it cannot be read as a table
     */
    public static RowSource open(
            Path path, String file, Optional<String> sheet, Span at, int headingRow, List<Diagnostic> findings)
            throws IOException {
        refuseOlderKinds(path, file);
        try (var workbook = OpenWorkbook.open(path, file)) {
            var names = workbook.sheets().stream().map(WorkbookXml.Sheet::name).toList();
            if (sheet.isEmpty()) {
                throw new UnreadableRows(
                        at,
                        "`%s` is a workbook, and the mapping does not say which of its sheets is meant"
                                .formatted(path.getFileName()),
                        "add `sheet: %s`".formatted(String.join(" | ", names)));
            }
            var name = sheet.get();
            var found = workbook.sheet(name)
                    .orElseThrow(() -> new UnreadableRows(
                            at,
                            "`%s` has no sheet `%s`".formatted(path.getFileName(), name),
                            Suggest.instruction(name, names)));
            var survey = new SheetSurvey(headingRow - 1);
            workbook.read(found, survey);
            var rows = new WorkbookRows(path, file, name, headingRow, survey);
            var notes = new SheetNotes(rows, survey, workbook.sheets());
            notes.requireTable();
            findings.addAll(notes.findings());
            return rows;
        }
    }

    private static void refuseOlderKinds(Path path, String file) throws IOException {
        byte[] first;
        try (var in = Files.newInputStream(path)) {
            first = in.readNBytes(2);
        }
        if (first.length == 2 && (first[0] & 0xFF) == 0xD0 && (first[1] & 0xFF) == 0xCF) {
            throw new UnreadableRows(
                    Span.startOf(file),
                    "this workbook has a password, or is of the older kind .xls",
                    "save it as .xlsx, without a password");
        }
    }

    @Override
    public String file() {
        return file + ", " + sheet;
    }

    /** The file without the sheet. */
    String path() {
        return file;
    }

    String sheet() {
        return sheet;
    }

    @Override
    public List<String> header() {
        return header;
    }

    @Override
    public void forEach(Consumer<Row> visitor) {
        try (var workbook = OpenWorkbook.open(path, file)) {
            var found = workbook.sheet(sheet)
                    .orElseThrow(() -> new UnreadableRows(
                            Span.startOf(file), "the sheet `%s` has gone".formatted(sheet), "check the file"));
            workbook.read(found, new Rows(visitor));
        }
    }

    @Override
    public Span heading(int cell) {
        return place(headingRow, cell);
    }

    @Override
    public Span place(int line, int cell) {
        return Span.cell(file, sheet, line, firstColumn + cell + 1);
    }

    @Override
    public Span row(int line) {
        return place(line, 0);
    }

    /** Puts the cells of each row together and hands it on. */
    private final class Rows implements SheetVisitor {
        private final Consumer<Row> visitor;
        private List<DataCell> cells = new ArrayList<>();

        Rows(Consumer<Row> visitor) {
            this.visitor = visitor;
        }

        @Override
        public void cell(int row, int column, DataCell content, Source source) {
            if (row < headingRow) {
                return;
            }
            if (column < firstColumn) {
                throw new UnreadableRows(
                        Span.cell(file, sheet, row + 1, column + 1),
                        "`%s` stands left of the first heading".formatted(content.text()),
                        "give its column a heading, or take it out");
            }
            if (cells.size() > column - firstColumn) {
                throw new UnreadableRows(
                        Span.cell(file, sheet, row + 1, column + 1),
                        "this cell stands behind one further right in the workbook's text",
                        "open the workbook in a spreadsheet program and save it anew");
            }
            while (cells.size() < column - firstColumn) {
                cells.add(DataCell.blank());
            }
            cells.add(content);
        }

        @Override
        public void rowEnds(int row, boolean hidden) {
            if (!cells.isEmpty()) {
                while (cells.size() < header.size()) {
                    cells.add(DataCell.blank());
                }
                visitor.accept(new Row(row + 1, cells));
                cells = new ArrayList<>();
            }
        }
    }
}
