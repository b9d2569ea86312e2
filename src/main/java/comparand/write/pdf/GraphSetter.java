package comparand.write.pdf;

import com.lowagie.text.pdf.PdfStructureElement;
import comparand.document.Block.Graph;
import comparand.write.figure.Drawing;
import java.util.List;

/** Sets a figure with its caption: whole, on one page, and described in words for who cannot see it. */
final class GraphSetter {

    /** Wide enough for a page of a journal: 175 mm. */
    private static final float MOST = 496;

    private static final float ABOVE_CAPTION = 2;

    private final Page page;
    private final Type type;
    private final Graph graph;

    GraphSetter(Page page, Type type, Graph graph) {
        this.page = page;
        this.type = type;
        this.graph = graph;
    }

    /** In points, with its caption. */
    float height() {
        return (float) drawing().height()
                + ABOVE_CAPTION
                + caption().size() * type.small().leading();
    }

    void set(PdfStructureElement section) {
        float height = height();
        if (!page.fits(height) && height <= page.room()) {
            page.turn();
        }
        var drawing = drawing();
        float top = page.y();
        page.down((float) drawing.height());
        var figure = Structure.figure(
                section,
                graph.chart().alternative(),
                page.left(),
                page.y(),
                page.left() + (float) drawing.width(),
                top);
        Structure.content(
                page.canvas(),
                figure,
                () -> drawing.paint(new PdfSurface(page.canvas(), type.fonts(), page.left(), top)));
        page.down(ABOVE_CAPTION);
        if (!caption().isEmpty()) {
            page.paragraph(Structure.under(section, "Caption"), type.small(), caption(), 0);
        }
        page.down(type.belowTable());
    }

    private Drawing drawing() {
        return Drawing.of(graph.chart(), Math.min(MOST, page.width()), type.fonts());
    }

    private List<String> caption() {
        return graph.caption().isEmpty() ? List.of() : type.small().lines(graph.caption(), page.width());
    }
}
