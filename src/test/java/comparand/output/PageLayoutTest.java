package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.Built;
import comparand.support.TaggedPdf;
import comparand.support.TaggedPdf.Glyph;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Where the letters of the evidence table stand: within the margins, none on another, no page nearly empty. */
class PageLayoutTest {

    private static final double WIDTH = 842;
    private static final double HEIGHT = 595;
    private static final double SIDE = 36;
    private static final double HEAD = 44;
    private static final double FOOT = 40;

    /** A page whose text takes less of its height looks like a mistake. */
    private static final double NEARLY_EMPTY = 0.15;

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("no letter stands beyond the side margins, and the text keeps clear of the running head and foot")
    void margins(Built built) {
        var letters = letters(built);

        assertThat(letters).hasSizeGreaterThan(5000);
        assertThat(letters.stream().filter(g -> g.x() < SIDE - 0.5 || g.x() + g.width() > WIDTH - SIDE + 0.5))
                .isEmpty();
        assertThat(letters.stream().filter(g -> g.y() < 20 || g.y() > HEIGHT - 15))
                .isEmpty();
        assertThat(letters.stream().filter(g -> !g.artifact() && (g.y() < HEAD || g.y() > HEIGHT - FOOT)))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("no letter is printed on another: no cell runs into the next, no line into the one below")
    void overlaps(Built built) {
        assertThat(overlapping(letters(built))).isEmpty();
    }

    @Test
    @DisplayName("the search for letters on one another finds two that share a place, and lets neighbours stand")
    void overlapsAreFound() {
        var a = new Glyph(0, "a", 100, 100, 5, 9, false);

        assertThat(overlapping(List.of(a, new Glyph(0, "b", 103, 101, 5, 9, false))))
                .hasSize(1);
        assertThat(overlapping(List.of(a, new Glyph(0, "b", 105, 100, 5, 9, false))))
                .isEmpty();
        assertThat(overlapping(List.of(a, new Glyph(0, "b", 100, 110, 5, 9, false))))
                .isEmpty();
        assertThat(overlapping(List.of(a, new Glyph(1, "b", 100, 100, 5, 9, false))))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("no page is nearly empty")
    void noEmptyPages(Built built) {
        var byPage = letters(built).stream()
                .filter(g -> !g.artifact())
                .collect(Collectors.groupingBy(Glyph::page, TreeMap::new, Collectors.toList()));
        var pages = letters(built).stream().mapToInt(Glyph::page).max().orElse(0) + 1;

        assertThat(byPage).hasSize(pages);
        var filled = new TreeMap<Integer, Double>();
        byPage.forEach((page, letters) -> filled.put(
                page + 1, (letters.stream().mapToDouble(Glyph::y).max().orElse(0) - HEAD) / (HEIGHT - HEAD - FOOT)));
        assertThat(filled.entrySet().stream()
                        .filter(e -> e.getValue() < NEARLY_EMPTY)
                        .map(e -> "page %d is filled to %.0f %%".formatted(e.getKey(), 100 * e.getValue())))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("no heading stands at the foot of a page without what it heads")
    void noHeadingAlone(Built built) {
        var pdf = TaggedPdf.of(built.folder().resolve(Libraries.TABLE));
        for (var section : pdf.elements().get(0).children()) {
            for (int i = 0; i < section.children().size() - 1; i++) {
                if (section.children().get(i).type().matches("H\\d")) {
                    var heading = section.children().get(i);
                    assertThat(section.children().get(i + 1).pages().first())
                            .as(heading.text())
                            .isEqualTo(heading.pages().last());
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("the notes of a table begin on the page on which it ends")
    void notesStayWithTheirTable(Built built) {
        for (var section : TaggedPdf.of(built.folder().resolve(Libraries.TABLE))
                .elements()
                .get(0)
                .children()) {
            for (int i = 0; i < section.children().size() - 1; i++) {
                var table = section.children().get(i);
                var next = section.children().get(i + 1);
                if (table.type().equals("Table") && next.text().matches("[a-z] .*")) {
                    assertThat(next.pages().first())
                            .as(next.text())
                            .isEqualTo(table.pages().last());
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("a number and its unit are not parted by the end of a line")
    void unitsStayWithTheirNumbers(Built built) {
        var lines = lines(built);

        assertThat(lines).hasSizeGreaterThan(100);
        var parted = new ArrayList<String>();
        for (int i = 0; i < lines.size() - 1; i++) {
            if (lines.get(i).matches(".*\\d") && lines.get(i + 1).matches("(%|mm|m[LlgG]|L/|l/|g/|°C).*")) {
                parted.add(lines.get(i) + " ⏎ " + lines.get(i + 1));
            }
        }
        assertThat(parted).isEmpty();
    }

    /** The lines of paragraphs and cells, each as it stands on the page. */
    private static List<String> lines(Built built) {
        var lines = new ArrayList<String>();
        var line = new StringBuilder();
        Glyph last = null;
        for (var glyph : TaggedPdf.of(built.folder().resolve(Libraries.TABLE)).glyphs()) {
            boolean newLine = last != null
                    && (Math.abs(glyph.y() - last.y()) > 4 || glyph.x() < last.x() || glyph.x() - last.x() > 30);
            if (newLine) {
                lines.add(line.toString().strip());
                line.setLength(0);
            }
            line.append(glyph.text());
            last = glyph;
        }
        lines.add(line.toString().strip());
        return lines;
    }

    /** Letters of one page and line that share more than a third of the narrower one's width. */
    private static List<String> overlapping(List<Glyph> letters) {
        var found = new ArrayList<String>();
        var byPage = letters.stream().collect(Collectors.groupingBy(Glyph::page));
        for (var page : byPage.values()) {
            var sorted =
                    page.stream().sorted((a, b) -> Float.compare(a.x(), b.x())).toList();
            for (int i = 0; i < sorted.size(); i++) {
                var a = sorted.get(i);
                for (int k = i + 1; k < sorted.size() && sorted.get(k).x() < a.x() + a.width(); k++) {
                    var b = sorted.get(k);
                    double shared = Math.min(a.x() + a.width(), b.x() + b.width()) - b.x();
                    boolean sameLine = Math.abs(a.y() - b.y()) < 0.6 * Math.min(a.size(), b.size());
                    if (sameLine && shared > Math.min(a.width(), b.width()) / 3) {
                        found.add("page %d: %s and %s at %.0f, %.0f"
                                .formatted(a.page() + 1, a.text(), b.text(), a.x(), a.y()));
                    }
                }
            }
        }
        return found;
    }

    private static List<Glyph> letters(Built built) {
        Predicate<Glyph> blank = g -> g.text().isBlank() || g.text().equals("\u00a0");
        return TaggedPdf.of(built.folder().resolve(Libraries.TABLE)).glyphs().stream()
                .filter(blank.negate())
                .toList();
    }
}
