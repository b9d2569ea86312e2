package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.BookRows;
import comparand.support.BookRows.BookRow;
import comparand.support.Built;
import comparand.support.TaggedPdf;
import comparand.support.TaggedPdf.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a reader may take for granted: headings keep their word, signs are explained, sentences are plain English. */
class ReadersTest {

    private static final Pattern TWICE =
            Pattern.compile("\\b(\\p{L}{2,})\\b[:,]? \\1\\b", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    private static final Pattern ONE_OF_MANY =
            Pattern.compile("(?<![\\d.,] ?)\\b1 (?:events|units|cases|runs|rows|values|findings|patients)\\b");

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("where a heading promises n, every result under it gives n with what was counted")
    void nIsGiven(Built built) {
        var without = new ArrayList<String>();
        int results = 0;
        for (var table : pdf(built).all("Table")) {
            var headings = table.children().get(0).all("TH");
            for (var row : table.children().get(1).all("TR")) {
                for (int c = 0; c < headings.size(); c++) {
                    var cell = row.children().get(c).text();
                    if (headings.get(c).text().endsWith("; n") && cell.matches("\\[?[−\\d.]+ \\([\\d.]+\\).*")) {
                        results++;
                        if (!cell.matches(".*; \\d+ \\p{L}+.*")) {
                            without.add(headings.get(c).text() + ": " + cell);
                        }
                    }
                }
            }
        }
        assertThat(results).isPositive();
        assertThat(without).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("every sign that stands for something in a table is explained in the key")
    void signsAreExplained(Built built) {
        var rows = rows(built);
        var key = rows.stream()
                .filter(r -> r.table().equals("Key"))
                .map(r -> r.text("Word") + " " + r.text("What it means"))
                .collect(Collectors.joining(" "));
        var printed = Stream.concat(
                        rows.stream()
                                .filter(r -> r.table().equals("Compare"))
                                .map(r -> r.text("On our footing") + r.text("Conditions")),
                        pdf(built).all("Table").stream().flatMap(t -> under(t, "On our footing")))
                .collect(Collectors.joining(" "));

        assertThat(List.of("≠", "≈", "±", "–").stream()
                        .filter(s -> printed.contains(s))
                        .filter(s -> !key.contains(s)))
                .isEmpty();
        assertThat(key).contains("square brackets", "question mark", "NA", "NR", "95 % CI");
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("values from a source that a maker paid for are marked so, as the cautions say")
    void makersAreMarked(Built built) {
        var makers = Built.all(built.results().get("sources")).stream()
                .filter(s -> s.get("funding").asText().equals("maker"))
                .map(s -> s.get("number").asText())
                .toList();
        var values = rows(built).stream()
                .filter(r -> r.table().equals("Compare"))
                .filter(r -> makers.contains(r.text("Locator").replaceFirst(":.*", "")))
                .toList();

        assertThat(values).isNotEmpty();
        assertThat(values.stream()
                        .filter(r -> r.cells().stream().noneMatch(c -> c.shown().contains("maker")))
                        .map(r -> r.text("Locator")))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("no word is said twice in a row")
    void notTwice(Built built) {
        assertThat(texts(built).stream().filter(t -> TWICE.matcher(t).find())).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("one is not followed by a plural")
    void oneIsOne(Built built) {
        assertThat(texts(built).stream().filter(t -> ONE_OF_MANY.matcher(t).find()))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("the letter n for a number of results is never written large")
    void smallN(Built built) {
        assertThat(texts(built).stream().filter(t -> t.matches("N (is|=) .*"))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("in one column, either every text ends with a full stop or none does")
    void fullStops(Built built) {
        var columns = rows(built).stream()
                .filter(r -> List.of("Compare", "Conditions", "NotComparable", "SetAside", "Findings")
                        .contains(r.table()))
                .flatMap(r -> r.cells().stream().map(c -> List.of(r.table() + ", " + c.heading(), c.shown())))
                .filter(c -> c.get(1).contains(" "))
                .collect(Collectors.groupingBy(
                        c -> c.get(0), Collectors.mapping(c -> c.get(1).endsWith("."), Collectors.toSet())));

        assertThat(columns).hasSizeGreaterThan(20);
        assertThat(columns.entrySet().stream().filter(e -> e.getValue().size() > 1))
                .isEmpty();
    }

    /** The cells under a heading of a table. */
    private static Stream<String> under(Element table, String heading) {
        var headings =
                table.children().get(0).all("TH").stream().map(Element::text).toList();
        return headings.contains(heading)
                ? table.children().get(1).all("TR").stream()
                        .map(r -> r.children().get(headings.indexOf(heading)).text())
                : Stream.of();
    }

    private static List<String> texts(Built built) {
        return Stream.concat(
                        rows(built).stream().flatMap(r -> r.cells().stream()).map(BookRows.BookCell::shown),
                        pdf(built).elements().stream()
                                .flatMap(Element::all)
                                .filter(e -> e.children().isEmpty())
                                .map(Element::text))
                .map(t -> t.replace('\u00a0', ' '))
                .distinct()
                .toList();
    }

    private static List<BookRow> rows(Built built) {
        return BookRows.tables(built.folder().resolve(Libraries.WORKBOOK));
    }

    private static TaggedPdf pdf(Built built) {
        return TaggedPdf.of(built.folder().resolve(Libraries.TABLE));
    }
}
