package comparand.read.workbook;

import comparand.model.DataCell;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;

/** One pass over a sheet before its rows are read: its headings, and what in it a reader of the sheet would not see. */
final class SheetSurvey implements SheetVisitor {

    private static final Pattern LOOKS_LIKE_NUMBER = Pattern.compile("[+\\-−]?\\d+([.,]\\d+)?");

    /** Counted from 0: XFD. */
    private static final int LAST_COLUMN = 16_383;

    /** Cells of one kind: the first of them and how many there are. */
    record Met(CellAddress first, int count) {
        Met more() {
            return new Met(first, count + 1);
        }
    }

    private final int headingRow;
    private final SortedMap<Integer, String> headings = new TreeMap<>();
    private final SortedMap<Integer, Met> textNumbers = new TreeMap<>();
    private final List<CellRangeAddress> merged = new ArrayList<>();
    private final SortedSet<Integer> hiddenColumns = new TreeSet<>();
    private Optional<Met> formulas = Optional.empty();
    private Optional<Met> withoutResult = Optional.empty();
    private Optional<Met> hiddenRows = Optional.empty();
    private int lastRow = -1;

    /** A survey of a sheet whose headings stand in a row, counted from 0. */
    SheetSurvey(int headingRow) {
        this.headingRow = headingRow;
    }

    @Override
    public void cell(int row, int column, DataCell content, Source source) {
        if (row < headingRow) {
            return;
        }
        lastRow = Math.max(lastRow, row);
        if (row == headingRow) {
            headings.put(column, content.text());
        }
        if (source == Source.FORMULA_WITHOUT_RESULT) {
            withoutResult = met(withoutResult, row, column);
        } else if (source == Source.FORMULA) {
            formulas = met(formulas, row, column);
        }
        if (row > headingRow
                && content instanceof DataCell.Text text
                && LOOKS_LIKE_NUMBER.matcher(text.text()).matches()) {
            textNumbers.merge(column, new Met(new CellAddress(row, column), 1), (old, next) -> old.more());
        }
    }

    private static Optional<Met> met(Optional<Met> before, int row, int column) {
        return Optional.of(before.map(Met::more).orElseGet(() -> new Met(new CellAddress(row, column), 1)));
    }

    @Override
    public void rowEnds(int row, boolean hidden) {
        // a hidden row that holds nothing hides nothing
        if (hidden && row == lastRow) {
            hiddenRows = met(hiddenRows, row, firstColumn());
        }
    }

    @Override
    public void hiddenColumns(int first, int last) {
        for (int c = Math.max(0, first); c <= Math.min(last, LAST_COLUMN); c++) {
            hiddenColumns.add(c);
        }
    }

    @Override
    public void merged(CellRangeAddress range) {
        merged.add(range);
    }

    /** The column of the first heading. */
    int firstColumn() {
        return headings.isEmpty() ? 0 : headings.firstKey();
    }

    /** From the first heading to the last; a column without one between them has an empty heading. */
    List<String> headings() {
        var all = new ArrayList<String>();
        if (!headings.isEmpty()) {
            for (int c = headings.firstKey(); c <= headings.lastKey(); c++) {
                all.add(headings.getOrDefault(c, ""));
            }
        }
        return all;
    }

    private boolean isInTable(int column) {
        return !headings.isEmpty() && column >= headings.firstKey() && column <= headings.lastKey();
    }

    /** The uppermost merged range that touches the headings or the rows below. */
    Optional<CellRangeAddress> mergedInTable() {
        return merged.stream()
                .filter(m -> m.getLastRow() >= headingRow && m.getFirstRow() <= lastRow)
                .filter(m -> !headings.isEmpty()
                        && m.getLastColumn() >= headings.firstKey()
                        && m.getFirstColumn() <= headings.lastKey())
                .min(Comparator.comparingInt(CellRangeAddress::getFirstRow)
                        .thenComparingInt(CellRangeAddress::getFirstColumn));
    }

    /** The hidden columns that have headings, counted from 0. */
    List<Integer> hiddenColumnsOfTable() {
        return hiddenColumns.stream().filter(this::isInTable).toList();
    }

    Optional<Met> hiddenRows() {
        return hiddenRows;
    }

    Optional<Met> formulas() {
        return formulas;
    }

    Optional<Met> withoutResult() {
        return withoutResult;
    }

    /** Texts that look like numbers, by column. */
    SortedMap<Integer, Met> textNumbers() {
        return textNumbers;
    }
}
