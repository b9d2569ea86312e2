package comparand.write.pdf;

import com.lowagie.text.pdf.PdfStructureElement;
import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Note;
import comparand.document.Block.Table;
import comparand.document.Cell;
import java.util.ArrayList;
import java.util.List;

/** Sets a table: headings repeat on every page, a row is broken only if it is taller than a page. */
final class TableSetter {

    private static final float RISE = 2.4f;

    private final Page page;
    private final Type type;
    private final Table table;
    private final float[] widths;
    private final List<List<String>> headings = new ArrayList<>();
    private final float headingHeight;
    private final float pad;

    private TableSetter(Page page, Type type, Table table) {
        this.page = page;
        this.type = type;
        this.table = table;
        this.pad = type.cellPad();
        this.widths = widths(table.columns(), page.width());
        float tallest = 0;
        for (int c = 0; c < table.columns().size(); c++) {
            var lines = type.cellStrong().lines(table.columns().get(c).heading(), widths[c] - 2 * pad);
            headings.add(lines);
            tallest = Math.max(tallest, lines.size() * type.cellStrong().leading());
        }
        this.headingHeight = tallest + 2 * pad;
    }

    static void set(Page page, Type type, PdfStructureElement section, Table table) {
        new TableSetter(page, type, table).set(section);
    }

    /** How much of a table is set on one page at its beginning: the headings and the first row, unless that is very tall. */
    static float beginning(Page page, Type type, Table table) {
        return new TableSetter(page, type, table).beginning();
    }

    private float beginning() {
        float first = table.rows().isEmpty() ? 0 : height(lines(table.rows().get(0)));
        return headingHeight + Math.min(first, page.room() / 3);
    }

    private static float[] widths(List<Column> columns, float room) {
        double sum = columns.stream().mapToDouble(Column::width).sum();
        var widths = new float[columns.size()];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = (float) (columns.get(i).width() / sum * room);
        }
        return widths;
    }

    private void set(PdfStructureElement section) {
        var element = Structure.under(section, "Table");
        var rows = table.rows().stream().map(this::lines).toList();
        if (!page.fits(beginning())) {
            page.turn();
        }
        headings(Structure.under(Structure.under(element, "THead"), "TR"));
        var body = Structure.under(element, "TBody");
        for (int r = 0; r < rows.size(); r++) {
            boolean last = r == rows.size() - 1;
            row(Structure.under(body, "TR"), table.rows().get(r), rows.get(r), last ? firstNote() : 0);
        }
        page.down(type.aboveNotes());
        for (var note : table.notes()) {
            page.paragraph(Structure.under(section, "P"), type.note(), lines(note), 3);
        }
        page.down(type.belowTable());
    }

    private List<String> lines(Note note) {
        return type.note().lines(note.mark() + "  " + note.text(), page.width() - 6);
    }

    /** The room of the first note, which stays with the last row. */
    private float firstNote() {
        return table.notes().isEmpty()
                ? 0
                : type.aboveNotes()
                        + lines(table.notes().get(0)).size() * type.note().leading();
    }

    private List<List<String>> lines(List<Cell> row) {
        var lines = new ArrayList<List<String>>();
        for (int c = 0; c < row.size(); c++) {
            float room = widths[c] - 2 * pad - type.mark().width(row.get(c).marks());
            lines.add(style(row.get(c), table.columns().get(c)).lines(row.get(c).shown(), room));
        }
        return lines;
    }

    private TextStyle style(Cell cell, Column column) {
        boolean strong =
                column.names() || (cell instanceof Cell.Words words && words.weight() == Cell.Words.Weight.STRONG);
        return strong ? type.cellStrong() : type.cell();
    }

    private float height(List<List<String>> row) {
        int most = row.stream().mapToInt(List::size).max().orElse(1);
        return most * type.cell().leading() + 2 * pad;
    }

    private void headings(PdfStructureElement row) {
        float bottom = headingBand();
        float x = page.left();
        for (int c = 0; c < widths.length; c++) {
            var heading = Structure.heading(row, "Column");
            float at = x;
            int column = c;
            Structure.content(page.canvas(), heading, () -> headingText(column, at, bottom));
            x += widths[c];
        }
        page.down(headingHeight);
    }

    /** On later pages the headings are there for the eye; readers that read aloud have had them. */
    private void repeatHeadings() {
        float bottom = headingBand();
        Structure.artifact(page.canvas(), () -> {
            float x = page.left();
            for (int c = 0; c < widths.length; c++) {
                headingText(c, x, bottom);
                x += widths[c];
            }
        });
        page.down(headingHeight);
    }

    private float headingBand() {
        float bottom = page.y() - headingHeight;
        Structure.artifact(page.canvas(), () -> {
            page.band(page.left(), bottom, page.width(), headingHeight, TextStyle.BAND);
            page.rule(bottom, TextStyle.INK, 0.8f);
        });
        return bottom;
    }

    private void headingText(int column, float x, float bottom) {
        var lines = headings.get(column);
        var style = type.cellStrong();
        // headings stand on the rule
        float base = bottom + pad + (lines.size() - 1) * style.leading() + style.leading() * 0.25f;
        for (var line : lines) {
            page.show(style, line, aligned(column, x, style.width(line)), base);
            base -= style.leading();
        }
    }

    private float aligned(int column, float x, float width) {
        return table.columns().get(column).align() == Align.RIGHT ? x + widths[column] - pad - width : x + pad;
    }

    /** Sets a row; what must stand below it on the same page is {@code after} points high. */
    private void row(PdfStructureElement row, List<Cell> cells, List<List<String>> lines, float after) {
        var elements = new ArrayList<PdfStructureElement>();
        for (int c = 0; c < cells.size(); c++) {
            elements.add(table.columns().get(c).names() ? Structure.heading(row, "Row") : Structure.under(row, "TD"));
        }
        int from = 0;
        int all = lines.stream().mapToInt(List::size).max().orElse(1);
        while (from < all) {
            int to = upTo(from, all, after);
            if (to == from) {
                page.turn();
                repeatHeadings();
                continue;
            }
            piece(elements, cells, lines, from, to);
            from = to;
        }
    }

    /** How far a row can be set on this page: whole, or in pieces only if no page could hold it. */
    private int upTo(int from, int all, float after) {
        float leading = type.cell().leading();
        float left = (all - from) * leading + 2 * pad + after;
        if (page.fits(left)) {
            return all;
        }
        if (left <= page.room() - headingHeight) {
            return from;
        }
        int fitting = from;
        while (fitting < all && page.fits((fitting + 1 - from) * leading + 2 * pad)) {
            fitting++;
        }
        return fitting;
    }

    private void piece(
            List<PdfStructureElement> elements, List<Cell> cells, List<List<String>> lines, int from, int to) {
        float x = page.left();
        float top = page.y() - pad;
        for (int c = 0; c < cells.size(); c++) {
            var own = lines.get(c);
            if (from < own.size()) {
                int column = c;
                float at = x;
                Structure.content(
                        page.canvas(), elements.get(c), () -> cell(cells.get(column), own, column, at, top, from, to));
                if (cells.get(column) instanceof Cell.Words words && words.frame() != Cell.Words.Frame.NONE) {
                    float width = widths[c];
                    float high = (to - from) * type.cell().leading() + 2 * pad;
                    Structure.artifact(
                            page.canvas(), () -> Frames.draw(page.canvas(), words.frame(), at, top + pad, width, high));
                }
            }
            x += widths[c];
        }
        float height = (to - from) * type.cell().leading() + 2 * pad;
        page.down(height);
        float bottom = page.y();
        Structure.artifact(page.canvas(), () -> page.rule(bottom, TextStyle.RULE, 0.4f));
    }

    private void cell(Cell cell, List<String> lines, int column, float x, float top, int from, int to) {
        var style = style(cell, table.columns().get(column));
        for (int i = from; i < Math.min(to, lines.size()); i++) {
            float base = top - (i - from + 1) * style.leading() + style.leading() * 0.25f;
            float width = style.width(lines.get(i));
            float at = aligned(column, x, width);
            page.show(style, lines.get(i), at, base);
            if (i == lines.size() - 1) {
                page.show(type.mark(), cell.marks(), at + width + 1, base + RISE);
            }
        }
    }
}
