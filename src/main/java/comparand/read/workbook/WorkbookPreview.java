package comparand.read.workbook;

import comparand.model.DataCell;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The sheets of a workbook nobody has described yet, with the first rows of each. */
public final class WorkbookPreview {

    private static final int LOOKED_AT = 40;

    private WorkbookPreview() {}

    /**
     * A row.
     *
     * @param number as the sheet shows it
     * @param cells the texts of its cells from column A on
     */
    public record SheetRow(int number, List<String> cells) {
        public SheetRow {
            cells = List.copyOf(cells);
        }
    }

    /** One sheet. */
    public record Sheet(String name, boolean hidden, List<SheetRow> first) {
        public Sheet {
            first = List.copyOf(first);
        }
    }

    /**
     * Looks at a workbook.
     *
     * @throws comparand.model.UnreadableRows if it is none
     */
    public static List<Sheet> of(Path path) {
        try (var workbook = OpenWorkbook.open(path, path.getFileName().toString())) {
            return workbook.sheets().stream()
                    .map(s -> {
                        var rows = new FirstRows();
                        workbook.read(s, rows);
                        return new Sheet(s.name(), s.hidden(), rows.rows);
                    })
                    .toList();
        }
    }

    private static final class FirstRows implements SheetVisitor {
        private final List<SheetRow> rows = new ArrayList<>();
        private List<String> cells = new ArrayList<>();

        @Override
        public void cell(int row, int column, DataCell content, Source source) {
            while (cells.size() < column) {
                cells.add("");
            }
            cells.add(content.text());
        }

        @Override
        public void rowEnds(int row, boolean hidden) {
            if (!cells.isEmpty()) {
                rows.add(new SheetRow(row + 1, cells));
                cells = new ArrayList<>();
            }
            if (rows.size() == LOOKED_AT) {
                throw new OpenWorkbook.Enough();
            }
        }
    }
}
