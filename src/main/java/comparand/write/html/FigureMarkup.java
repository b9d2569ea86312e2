package comparand.write.html;

import comparand.document.Block;
import comparand.write.figure.Drawing;
import comparand.write.figure.Faces;
import comparand.write.figure.PrintWidth;
import comparand.write.figure.SvgFigure;

/** Sets figures as drawings within the page, twice: for a wide window and for a narrow one; the style sheet shows one of them. */
final class FigureMarkup {

    /** In points of the drawing. A telephone shows it so that its letters are about as large as those beside it. */
    private static final double NARROW = 225;

    private final Faces faces;
    private final Html html;

    FigureMarkup(Faces faces, Html html) {
        this.faces = faces;
        this.html = html;
    }

    void write(Block.Graph graph) {
        html.open("figure", "id", "f-" + graph.chart().id()).line();
        draw(graph, "wide", PrintWidth.TWO_COLUMNS.points());
        draw(graph, "narrow", NARROW);
        if (!graph.caption().isEmpty()) {
            html.element("figcaption", graph.caption()).line();
        }
        html.close().line();
    }

    private void draw(Block.Graph graph, String form, double width) {
        var chart = graph.chart();
        html.made(SvgFigure.within(chart, Drawing.of(chart, width, faces), "f-" + chart.id() + "-" + form, form))
                .line();
    }
}
