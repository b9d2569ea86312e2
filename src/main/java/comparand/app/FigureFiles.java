package comparand.app;

import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Look;
import comparand.document.chart.Chart;
import comparand.document.publication.Publication;
import comparand.document.talk.Deck;
import comparand.write.figure.Drawing;
import comparand.write.figure.Faces;
import comparand.write.figure.PngFigure;
import comparand.write.figure.PrintWidth;
import comparand.write.figure.SvgFigure;
import comparand.write.pdf.PdfFigure;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Figures as files of their own: as SVG and PDF, and as PNG at the two resolutions that printers ask for. */
final class FigureFiles {

    static final String FOLDER = "figures";

    private static final List<Integer> DOTS_PER_INCH = List.of(300, 600);

    private final Path folder;

    FigureFiles(Path folder) {
        this.folder = folder;
    }

    /** The names of the files, relative to the folder. */
    List<String> write(Publication publication) throws IOException {
        var names = new ArrayList<String>();
        if (publication.figures().isEmpty()) {
            return names;
        }
        Files.createDirectories(folder.resolve(FOLDER));
        var fonts = fonts(publication);
        var faces = Faces.of(fonts);
        var edition = edition(publication);
        for (var chart : publication.figures()) {
            var width = PrintWidth.of(chart);
            var drawing = Drawing.of(chart, width.points(), faces);
            names.add(svg(chart, drawing, faces, edition.language()));
            names.add(pdf(chart, edition, fonts));
            for (int dpi : DOTS_PER_INCH) {
                var name = "%s/%s-%dmm-%ddpi.png".formatted(FOLDER, chart.id(), width.mm(), dpi);
                try (var out = open(name)) {
                    PngFigure.write(drawing, faces, dpi, out);
                }
                names.add(name);
            }
        }
        return names;
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

    private String pdf(Chart chart, Edition edition, Optional<Look.Fonts> fonts) throws IOException {
        var name = FOLDER + "/" + chart.id() + ".pdf";
        try (var out = open(name)) {
            PdfFigure.write(chart, edition, fonts, out);
        }
        return name;
    }

    private String svg(Chart chart, Drawing drawing, Faces faces, String language) throws IOException {
        var name = FOLDER + "/" + chart.id() + ".svg";
        try (var out = open(name)) {
            SvgFigure.write(chart, drawing, faces, language, out);
        }
        return name;
    }

    private OutputStream open(String name) throws IOException {
        return new BufferedOutputStream(Files.newOutputStream(folder.resolve(name)));
    }
}
