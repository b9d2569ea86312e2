package comparand.app;

import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Look;
import comparand.document.publication.Publication;
import comparand.document.talk.Deck;
import comparand.write.figure.Drawing;
import comparand.write.figure.Faces;
import comparand.write.figure.PngFigure;
import comparand.write.figure.PrintWidth;
import comparand.write.figure.SvgFigure;
import comparand.write.pdf.PdfFigure;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Figures as files of their own: as SVG and PDF, and as PNG at the two resolutions that printers ask for. */
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
        var faces = new Once<>(() -> Faces.of(fonts));
        for (var chart : publication.figures()) {
            var width = PrintWidth.of(chart);
            var drawing = new Once<>(() -> Drawing.of(chart, width.points(), faces.get()));
            var language = edition.language();
            files.add(new OutputFile(
                    FOLDER + "/" + chart.id() + ".svg",
                    List.of(chart, fonts, language),
                    out -> SvgFigure.write(chart, drawing.get(), faces.get(), language, out)));
            files.add(new OutputFile(
                    FOLDER + "/" + chart.id() + ".pdf",
                    List.of(chart, fonts, edition),
                    out -> PdfFigure.write(chart, edition, fonts, out)));
            for (int dpi : DOTS_PER_INCH) {
                files.add(new OutputFile(
                        "%s/%s-%dmm-%ddpi.png".formatted(FOLDER, chart.id(), width.mm(), dpi),
                        List.of(chart, fonts),
                        out -> PngFigure.write(drawing.get(), faces.get(), dpi, out)));
            }
        }
        return files;
    }

    /** What several files are drawn from: made for the first that is drawn, and not at all where all are taken over. */
    private static final class Once<T> {

        private final Making<T> making;
        private Optional<T> made = Optional.empty();

        Once(Making<T> making) {
            this.making = making;
        }

        T get() throws IOException {
            var now = made.isPresent() ? made.get() : making.make();
            made = Optional.of(now);
            return now;
        }
    }

    private interface Making<T> {
        T make() throws IOException;
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
