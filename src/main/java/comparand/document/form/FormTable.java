package comparand.document.form;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A sheet with a row for each thing, under headings that stay in sight.
 *
 * @param lead one or two sentences above the headings
 * @param rows filled cells, as many as there are columns
 * @param emptyRows how many rows are made ready below them
 * @param fixed how many columns at the left stay in sight
 */
public record FormTable(
        String name, String lead, List<Column> columns, List<List<String>> rows, int emptyRows, int fixed) {

    /** Rows of a sheet, counted from 1: the lead stands in the first, then come groups and headings. */
    public static final int HEADING_ROW = 4;

    public static final int FIRST_ROW = HEADING_ROW + 1;

    public FormTable {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        int width = columns.size();
        if (rows.stream().anyMatch(r -> r.size() != width)) {
            throw new IllegalArgumentException("every row of " + name + " has a cell for each column");
        }
        var headings = new TreeSet<String>();
        columns.forEach(c -> {
            if (!headings.add(c.heading())) {
                throw new IllegalArgumentException(name + " has two columns `" + c.heading() + "`");
            }
        });
    }

    /**
     * One column.
     *
     * @param group what the columns beside each other are about
     * @param help shown when the cell is chosen: at most 255 characters, as spreadsheet programs allow
     * @param list the list of words the cell offers
     * @param open whether other words than those of the list may stand there
     * @param wanted a formula over the row that is true where the cell still has to be filled; {@code {row}} stands for
     *     the row's number
     */
    public record Column(
            String group,
            String heading,
            String help,
            int width,
            Optional<String> list,
            boolean open,
            Optional<String> wanted) {}
}
