package comparand.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/** A tagged PDF read back: its structure tree with the text of every element, and every glyph with its place. */
public final class TaggedPdf {

    /** Smaller letters are marks that call a note. */
    private static final float MARK_SIZE = 6;

    private final List<Glyph> glyphs = new ArrayList<>();
    private final List<Map<Integer, List<Glyph>>> contents = new ArrayList<>();
    private final List<String> artifacts = new ArrayList<>();
    private final List<Element> elements;

    private TaggedPdf(PDDocument document) throws IOException {
        for (int p = 0; p < document.getNumberOfPages(); p++) {
            readPage(document.getPage(p), p);
        }
        var root = document.getDocumentCatalog().getStructureTreeRoot();
        elements = children(root, document);
    }

    /**
     * A letter, or what is printed for one.
     *
     * @param page from 0
     * @param x left edge, from the left edge of the page as it is looked at
     * @param y base line, from its upper edge
     */
    public record Glyph(int page, String text, float x, float y, float width, float size, boolean artifact) {}

    /**
     * An element of the structure tree.
     *
     * @param text of the element and of those under it, line ends folded into blanks, without marks
     * @param marks that call notes
     * @param scope of a table heading; empty for others
     */
    public record Element(
            String type, String text, String marks, String scope, SortedSet<Integer> pages, List<Element> children) {

        /** This element and all under it, in reading order. */
        public Stream<Element> all() {
            return Stream.concat(Stream.of(this), children.stream().flatMap(Element::all));
        }

        /** All of a type at or under this element. */
        public List<Element> all(String wanted) {
            return all().filter(e -> e.type.equals(wanted)).toList();
        }
    }

    public static TaggedPdf of(Path file) {
        try (var document = Loader.loadPDF(file.toFile())) {
            return new TaggedPdf(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every glyph of every page, in the order in which they are set. */
    public List<Glyph> glyphs() {
        return List.copyOf(glyphs);
    }

    /** What stands on each page beside the text: running heads and feet, repeated headings. */
    public List<String> artifacts() {
        return List.copyOf(artifacts);
    }

    /** The elements under the root. */
    public List<Element> elements() {
        return elements;
    }

    /** All elements of a type. */
    public List<Element> all(String type) {
        return elements.stream().flatMap(e -> e.all(type).stream()).toList();
    }

    private void readPage(PDPage page, int index) throws IOException {
        var extractor = new PDFMarkedContentExtractor();
        extractor.setSuppressDuplicateOverlappingText(false);
        extractor.processPage(page);
        var byId = new TreeMap<Integer, List<Glyph>>();
        var beside = new ArrayList<String>();
        for (var content : extractor.getMarkedContents()) {
            boolean artifact = "Artifact".equals(content.getTag());
            var set = new ArrayList<Glyph>();
            collect(content, index, artifact, set);
            glyphs.addAll(set);
            if (artifact) {
                beside.add(text(set, false));
            } else {
                byId.computeIfAbsent(content.getMCID(), id -> new ArrayList<>()).addAll(set);
            }
        }
        contents.add(byId);
        artifacts.add(String.join(" ", beside));
    }

    private static void collect(PDMarkedContent content, int page, boolean artifact, List<Glyph> into) {
        for (var piece : content.getContents()) {
            if (piece instanceof TextPosition t) {
                into.add(new Glyph(
                        page, t.getUnicode(), t.getX(), t.getY(), t.getWidth(), t.getFontSizeInPt(), artifact));
            } else if (piece instanceof PDMarkedContent inner) {
                collect(inner, page, artifact, into);
            }
        }
    }

    private List<Element> children(PDStructureNode node, PDDocument document) {
        var children = new ArrayList<Element>();
        for (var kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                children.add(element(element, document));
            }
        }
        return children;
    }

    private Element element(PDStructureElement element, PDDocument document) {
        var own = new ArrayList<Glyph>();
        for (var kid : element.getKids()) {
            if (kid instanceof Integer id) {
                own.addAll(content(document, element.getPage(), id));
            } else if (kid instanceof PDMarkedContentReference reference) {
                var page = Optional.ofNullable(reference.getPage()).orElse(element.getPage());
                own.addAll(content(document, page, reference.getMCID()));
            }
        }
        var children = children(element, document);
        var pages = new TreeSet<Integer>();
        own.forEach(g -> pages.add(g.page()));
        children.forEach(c -> pages.addAll(c.pages()));
        var texts = Stream.concat(Stream.of(text(own, false)), children.stream().map(Element::text))
                .filter(t -> !t.isBlank())
                .toList();
        return new Element(
                element.getStructureType(),
                String.join(" ", texts),
                text(own, true),
                scope(element.getCOSObject()),
                pages,
                children);
    }

    private static String scope(COSDictionary element) {
        return element.getDictionaryObject(COSName.A) instanceof COSDictionary attributes
                ? Optional.ofNullable(attributes.getNameAsString(COSName.getPDFName("Scope")))
                        .orElse("")
                : "";
    }

    private List<Glyph> content(PDDocument document, PDPage page, int id) {
        return contents.get(document.getPages().indexOf(page)).getOrDefault(id, List.of());
    }

    /** Glyphs as text: a new line is a blank; marks that call notes apart from the rest. */
    private static String text(List<Glyph> glyphs, boolean marks) {
        var out = new StringBuilder();
        Glyph last = null;
        for (var glyph : glyphs) {
            if (glyph.size() < MARK_SIZE != marks) {
                continue;
            }
            if (last != null && isApart(last, glyph)) {
                out.append(' ');
            }
            out.append(glyph.text());
            last = glyph;
        }
        return out.toString().replaceAll(" +", " ").strip();
    }

    private static boolean isApart(Glyph last, Glyph next) {
        return Math.abs(next.y() - last.y()) > 1 || next.x() - (last.x() + last.width()) > 1;
    }
}
