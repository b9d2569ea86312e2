package comparand.write.figure;

import comparand.document.Look;
import comparand.document.chart.Chart;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;

/** Figures as PNG, at their printed width. Drawing them is most of the work of a run, and several files want the same ones. */
@FunctionalInterface
public interface Pictures {

    /** Each one drawn when it is asked for. */
    Pictures DRAWN = (chart, fonts, dpi) -> {
        var faces = Faces.of(fonts);
        var bytes = new ByteArrayOutputStream();
        PngFigure.write(Drawing.of(chart, PrintWidth.of(chart).points(), faces), faces, dpi, bytes);
        return bytes.toByteArray();
    };

    /**
     * The bytes of a PNG file.
     *
     * @param fonts those of a house, if it brings its own
     * @param dpi dots per inch
     */
    byte[] png(Chart chart, Optional<Look.Fonts> fonts, int dpi) throws IOException;
}
