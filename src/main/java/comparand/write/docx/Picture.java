package comparand.write.docx;

import comparand.document.Block;
import comparand.document.Look;
import comparand.write.figure.Drawing;
import comparand.write.figure.Faces;
import comparand.write.figure.PngFigure;
import comparand.write.figure.PrintWidth;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.poi.common.usermodel.PictureType;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.util.Units;
import org.apache.poi.xwpf.usermodel.ParagraphAlignment;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;

/** Sets figures at the width of one or two columns of a journal, at the resolution of a printer, with their words. */
final class Picture {

    private static final int DOTS_PER_INCH = 600;
    /** Twentieths of a point. */
    private static final int TWIPS = 20;

    private final Faces faces;

    Picture(Look look) throws IOException {
        this.faces = Faces.of(look.fonts());
    }

    /** @param room the width of the text; a figure wider than it goes into both margins alike */
    void set(XWPFParagraph paragraph, Block.Graph graph, int room) {
        var chart = graph.chart();
        var drawing = Drawing.of(chart, PrintWidth.of(chart).points(), faces);
        int over = (int) Math.ceil((drawing.width() * TWIPS - room) / 2);
        if (over > 0) {
            paragraph.setIndentationLeft(-over);
            paragraph.setIndentationRight(-over);
        }
        paragraph.setAlignment(ParagraphAlignment.LEFT);
        try {
            var bytes = new ByteArrayOutputStream();
            PngFigure.write(drawing, faces, DOTS_PER_INCH, bytes);
            paragraph
                    .createRun()
                    .addPicture(
                            new ByteArrayInputStream(bytes.toByteArray()),
                            PictureType.PNG,
                            chart.id() + ".png",
                            Units.toEMU(drawing.width()),
                            Units.toEMU(drawing.height()));
            describe(paragraph, chart.alternative());
        } catch (IOException | InvalidFormatException e) {
            throw new IllegalStateException("the figure %s could not be set".formatted(chart.id()), e);
        }
    }

    private static void describe(XWPFParagraph paragraph, String alternative) {
        var run = paragraph.getRuns().get(0).getCTR();
        run.getDrawingArray(0).getInlineArray(0).getDocPr().setDescr(alternative);
    }
}
