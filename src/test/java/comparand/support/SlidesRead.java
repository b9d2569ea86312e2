package comparand.support;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.poi.sl.usermodel.Placeholder;
import org.apache.poi.xslf.usermodel.XMLSlideShow;
import org.apache.poi.xslf.usermodel.XSLFHyperlink;
import org.apache.poi.xslf.usermodel.XSLFShape;
import org.apache.poi.xslf.usermodel.XSLFSlide;
import org.apache.poi.xslf.usermodel.XSLFTable;
import org.apache.poi.xslf.usermodel.XSLFTextShape;

/** A presentation read back: what is on every slide, in reading order, and what its notes say. */
public final class SlidesRead {

    private SlidesRead() {}

    /**
     * A slide.
     *
     * @param number counted from 1
     * @param titles texts of its title placeholders
     * @param texts of every other shape, cell by cell, in reading order
     * @param rows of its tables, headings first
     * @param notes line by line
     * @param links numbers of the slides that it leads to
     * @param sizes of all text that has one of its own, in points
     * @param layout name of its layout
     */
    public record ReadSlide(
            int number,
            List<String> titles,
            List<String> texts,
            List<List<String>> rows,
            List<String> notes,
            List<Integer> links,
            List<Double> sizes,
            String layout) {

        public String title() {
            return titles.isEmpty() ? "" : titles.get(0);
        }

        /** All that can be read on it. */
        public List<String> all() {
            var all = new ArrayList<>(titles);
            all.addAll(texts);
            return all;
        }

        /** The lines of the notes under a heading. */
        public List<String> under(String heading) {
            var lines = new ArrayList<String>();
            int at = notes.indexOf(heading);
            for (int i = at + 1; at >= 0 && i < notes.size() && !notes.get(i).isEmpty(); i++) {
                lines.add(notes.get(i));
            }
            return lines;
        }
    }

    /** What is done with an open presentation. */
    public interface Use<R> {
        R of(XMLSlideShow show) throws IOException;
    }

    public static <R> R open(Path file, Use<R> use) {
        try (InputStream in = Files.newInputStream(file);
                var show = new XMLSlideShow(in)) {
            return use.of(show);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static List<ReadSlide> of(Path file) {
        return open(file, show -> {
            var slides = show.getSlides();
            return slides.stream().map(s -> read(s, slides)).toList();
        });
    }

    private static ReadSlide read(XSLFSlide slide, List<XSLFSlide> all) {
        var titles = new ArrayList<String>();
        var texts = new ArrayList<String>();
        var rows = new ArrayList<List<String>>();
        var links = new ArrayList<Integer>();
        var sizes = new ArrayList<Double>();
        for (XSLFShape shape : slide.getShapes()) {
            if (shape instanceof XSLFTextShape text) {
                boolean title =
                        text.getTextType() == Placeholder.TITLE || text.getTextType() == Placeholder.CENTERED_TITLE;
                (title ? titles : texts).add(plain(text.getText()));
                runs(text, slide, all, links, sizes);
            } else if (shape instanceof XSLFTable table) {
                for (var row : table.getRows()) {
                    var cells = new ArrayList<String>();
                    for (var cell : row.getCells()) {
                        cells.add(plain(cell.getText()));
                        runs(cell, slide, all, links, sizes);
                    }
                    rows.add(cells);
                    texts.addAll(cells);
                }
            }
        }
        return new ReadSlide(
                slide.getSlideNumber(),
                titles,
                texts,
                rows,
                notes(slide),
                links,
                sizes,
                slide.getSlideLayout().getName());
    }

    private static void runs(
            XSLFTextShape text, XSLFSlide slide, List<XSLFSlide> all, List<Integer> links, List<Double> sizes) {
        for (var paragraph : text.getTextParagraphs()) {
            for (var run : paragraph.getTextRuns()) {
                if (!run.getRawText().isBlank()) {
                    sizes.add(Objects.requireNonNull(run.getFontSize()));
                }
                XSLFHyperlink link = run.getHyperlink();
                if (link != null) {
                    links.add(target(link, slide, all));
                }
            }
        }
    }

    private static int target(XSLFHyperlink link, XSLFSlide slide, List<XSLFSlide> all) {
        var part = slide.getRelationById(link.getXmlObject().getId());
        return all.indexOf(part) + 1;
    }

    private static List<String> notes(XSLFSlide slide) {
        var notes = slide.getNotes();
        if (notes == null) {
            return List.of();
        }
        for (var shape : notes.getPlaceholders()) {
            if (shape.getTextType() == Placeholder.BODY) {
                return shape.getTextParagraphs().stream()
                        .map(p -> plain(p.getText()))
                        .toList();
            }
        }
        return List.of();
    }

    private static String plain(String text) {
        return NumberTokens.plain(text).strip();
    }
}
