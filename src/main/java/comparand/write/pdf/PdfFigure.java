package comparand.write.pdf;

import com.lowagie.text.DocumentException;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfWriter;
import comparand.document.Edition;
import comparand.document.Look;
import comparand.document.chart.Chart;
import comparand.write.Typefaces;
import comparand.write.figure.Drawing;
import comparand.write.figure.PrintWidth;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;

/** Writes a figure as a PDF of its own, on a page just as large as it is printed: vectors; PDF/UA-1 and PDF/A-2a. */
public final class PdfFigure {

    private PdfFigure() {}

    /** Writes a chart; its message becomes the title of the file, its alternative the words for who cannot see it. */
    public static void write(Chart chart, Edition edition, Optional<Look.Fonts> own, OutputStream out)
            throws IOException {
        var bytes = new ByteArrayOutputStream();
        var fonts = new Fonts(Typefaces.of(own));
        var drawing = Drawing.of(chart, PrintWidth.of(chart).points(), fonts);
        float width = (float) drawing.width();
        float height = (float) drawing.height();
        try (var pdf = new com.lowagie.text.Document(new Rectangle(width, height), 0, 0, 0, 0)) {
            var writer = PdfWriter.getInstance(pdf, bytes);
            DocumentProperties.announce(pdf, writer, edition.of(chart.message()));
            pdf.open();
            DocumentProperties.colours(writer);
            var figure = Structure.figure(new Structure(writer).section(), chart.alternative(), 0, 0, width, height);
            var canvas = writer.getDirectContent();
            Structure.content(canvas, figure, () -> drawing.paint(new PdfSurface(canvas, fonts, 0, height)));
        } catch (DocumentException e) {
            throw new IOException("the figure " + chart.id() + " could not be set", e);
        }
        out.write(StableBytes.of(bytes.toByteArray()));
    }
}
