package comparand.write.html;

import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Table;
import comparand.document.Cell;
import java.util.List;
import java.util.Locale;

/**
 * Sets tables with their notes. Roles are written out, since browsers forget them when the style sheet sets a row as a card on
 * narrow windows; there each cell shows its column's heading from {@code data-label}.
 */
final class TableMarkup {

    /** Characters of a line; a table that wants more may be moved sideways in its frame. */
    private static final double WIDE = 80;

    /** Columns that stand beside each other on a tablet. */
    private static final int MANY = 6;

    /** Columns that stand beside each other on paper without words being broken. */
    private static final int MOST = 12;

    /** Rows from which on columns have the widths of the document, for a browser that fits them to all cells takes long. */
    private static final int LONG = 300;

    private final Anchors anchors;
    private final PageWords words;
    private final Html html;

    TableMarkup(Anchors anchors, PageWords words, Html html) {
        this.anchors = anchors;
        this.words = words;
        this.html = html;
    }

    /**
     * Sets a table.
     *
     * @param section the heading of the section it stands in
     * @param heading the nearest heading above it, which names a table without a caption
     */
    void write(Table table, String section, String heading) {
        var name = table.caption().isEmpty() ? heading : table.caption();
        frame(table, name.equals(section) ? name : section + ": " + name);
        var id = Anchors.of(table);
        html.open("table", "id", id, "role", "table", "class", kind(table));
        if (table.caption().isEmpty()) {
            html.element("caption", heading, "class", "aside");
        } else {
            html.element("caption", table.caption());
        }
        shares(table);
        html.line().open("thead", "role", "rowgroup").open("tr", "role", "row");
        for (int c = 0; c < table.columns().size(); c++) {
            var named = table.columns().get(c).heading();
            html.element("th", named, "scope", "col", "role", "columnheader", "class", classes(table, c));
        }
        html.close().close().line().open("tbody", "role", "rowgroup").line();
        for (int r = 0; r < table.rows().size(); r++) {
            html.open("tr", "id", id + "-r" + r, "role", "row");
            row(table, table.rows().get(r));
            html.close().line();
        }
        html.close().close().close().line();
        for (var note : table.notes()) {
            html.open("p", "class", "note");
            if (!note.mark().isEmpty()) {
                html.element("sup", note.mark()).text(" ");
            }
            html.text(note.text()).close().line();
        }
    }

    /** What can be moved sideways can be reached by keyboard, and says what it is. */
    private void frame(Table table, String name) {
        double width = table.columns().stream().mapToDouble(Column::width).sum();
        if (width <= WIDE && table.columns().size() <= MANY) {
            html.open("div", "class", "frame");
            return;
        }
        var label = words.say("page.wide-table", "table", name);
        html.open("div", "class", "frame wide", "tabindex", "0", "role", "region", "aria-label", label);
    }

    private static String kind(Table table) {
        return (table.rows().size() < LONG ? "short" : "long") + (table.onPaper() > MOST ? " many" : "");
    }

    /** How columns share out the width, in per cent; the style sheet makes use of it on paper and in long tables. */
    private void shares(Table table) {
        double all = table.columns().stream().mapToDouble(Column::width).sum();
        html.line().open("colgroup");
        for (int c = 0; c < table.columns().size(); c++) {
            long share = Math.max(1, Math.round(100 * table.columns().get(c).width() / all));
            html.empty("col", "class", "c" + share + onScreen(table, c));
        }
        html.close();
    }

    private void row(Table table, List<Cell> row) {
        for (int c = 0; c < row.size(); c++) {
            var column = table.columns().get(c);
            var cell = row.get(c);
            var classes = classes(table, c);
            if (column.names()) {
                html.open("th", "scope", "row", "role", "rowheader", "data-label", column.heading(), "class", classes);
            } else {
                html.open("td", "role", "cell", "data-label", column.heading(), "class", classes);
            }
            cell.fold(new Shown());
            if (!cell.marks().isEmpty()) {
                html.element("sup", cell.marks());
            }
            html.close();
        }
    }

    private static String classes(Table table, int column) {
        var of = table.columns().get(column);
        return (of.align() == Align.RIGHT ? "r" : "l") + (of.names() ? " name" : "") + onScreen(table, column);
    }

    private static String onScreen(Table table, int column) {
        return column < table.onPaper() ? "" : " screen";
    }

    /** What a cell shows. Scripts put another text into the innermost element, which holds nothing but text. */
    private final class Shown implements Cell.Cases<Html> {

        @Override
        public Html words(Cell.Words cell) {
            var framed = cell.frame() == Cell.Words.Frame.NONE
                    ? "v"
                    : "v " + cell.frame().name().toLowerCase(Locale.ROOT);
            return cell.weight() == Cell.Words.Weight.STRONG
                    ? html.open("strong")
                            .element("span", cell.text(), "class", framed)
                            .close()
                    : html.element("span", cell.text(), "class", framed);
        }

        @Override
        public Html figure(Cell.Figure cell) {
            return html.element("span", cell.shown(), "class", "v n");
        }

        @Override
        public Html formula(Cell.Formula cell) {
            return cell.result().fold(this);
        }

        @Override
        public Html day(Cell.Day cell) {
            return html.open("time", "datetime", cell.shown())
                    .element("span", cell.shown(), "class", "v")
                    .close();
        }

        @Override
        public Html link(Cell.Link cell) {
            var target = anchors.of(cell.target());
            return target.isPresent()
                    ? html.open("a", "href", "#" + target.get())
                            .element("span", cell.text(), "class", "v")
                            .close()
                    : html.element("span", cell.text(), "class", "v");
        }
    }
}
