package comparand.app;

import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Look;
import comparand.document.chart.Chart;
import comparand.document.publication.Publication;
import comparand.document.talk.Deck;
import comparand.write.figure.Drawing;
import comparand.write.figure.Faces;
import comparand.write.figure.PrintWidth;
import comparand.write.figure.SvgFigure;
import comparand.write.pdf.PdfFigure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Figures as files of their own: as SVG and PDF, and as PNG at the two resolutions that printers ask for. Of what stands about a
 * run, the PDF alone says something; the others change with the figure and with nothing else.
 */
final class FigureFiles {

    static final String FOLDER = "figures";

    private static final List<Integer> DOTS_PER_INCH = List.of(300, 600);

    private FigureFiles() {}

    static List<OutputFile> of(Publication publication) {
        var files = new ArrayList<OutputFile>();
        if (publication.figures().isEmpty()) {
            return files;
        }
        var fonts = fonts(publication);
        var edition = edition(publication);
        for (var chart : publication.figures()) {
            files.add(svg(chart, fonts, edition.language()));
            files.add(new OutputFile(
                    FOLDER + "/" + chart.id() + ".pdf",
                    List.of(chart, fonts, edition),
                    (out, drawn) -> PdfFigure.write(chart, edition, fonts, out)));
            for (int dpi : DOTS_PER_INCH) {
                files.add(new OutputFile(
                        png(chart, dpi),
                        pngFrom(chart, fonts),
                        (out, drawn) -> out.write(drawn.png(chart, fonts, dpi))));
            }
        }
        return files;
    }

    /** The name of a figure at a resolution, relative to the folder of outputs. */
    static String png(Chart chart, int dpi) {
        return "%s/%s-%dmm-%ddpi.png"
                .formatted(FOLDER, chart.id(), PrintWidth.of(chart).mm(), dpi);
    }

    static List<Object> pngFrom(Chart chart, Optional<Look.Fonts> fonts) {
        return List.of(chart, fonts);
    }

    private static OutputFile svg(Chart chart, Optional<Look.Fonts> fonts, String language) {
        return new OutputFile(
                FOLDER + "/" + chart.id() + ".svg", List.of(chart, fonts, language), (out, drawn) -> {
                    var faces = Faces.of(fonts);
                    SvgFigure.write(
                            chart, Drawing.of(chart, PrintWidth.of(chart).points(), faces), faces, language, out);
                });
    }

    /** Those of the text the figures are for, where its house brings its own. */
    private static Optional<Look.Fonts> fonts(Publication publication) {
        return publication.documents().stream()
                .filter(d -> d.form() == Document.Form.TEXT)
                .findFirst()
                .flatMap(d -> d.look().fonts());
    }

    private static Edition edition(Publication publication) {
        return Stream.concat(
                        publication.documents().stream().map(Document::edition),
                        publication.decks().stream().map(Deck::edition))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("figures go with a document"));
    }
}
