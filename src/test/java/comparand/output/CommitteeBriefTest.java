package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.Built;
import comparand.support.ReadBack;
import comparand.support.TaggedPdf;
import comparand.support.TaggedPdf.Element;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The brief for a committee: two pages, all questions, the words for what is comparable, and no total. */
class CommitteeBriefTest {

    /** From the best on; the words of the map. */
    private static final Map<String, String> WORDS = new LinkedHashMap<>();

    static {
        WORDS.put("same", "same");
        WORDS.put("same-after-conversion", "converted");
        WORDS.put("conditions-differ", "differs");
        WORDS.put("different-quantity", "differs");
        WORDS.put("not-reported", "not reported");
    }

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("it has at most two standing A4 pages")
    void twoPages(Built built) throws IOException {
        try (var pdf = Loader.loadPDF(file(built).toFile())) {
            assertThat(pdf.getNumberOfPages()).isBetween(1, 2);
            assertThat(pdf.getPage(0).getMediaBox().getWidth()).isBetween(595f, 596f);
            assertThat(pdf.getPage(0).getMediaBox().getHeight()).isBetween(841f, 843f);
        }
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("every question of the dossier is a row, in the committee's words, with its margin")
    void questions(Built built) {
        var rows = rows(built, "Answer against the present device");

        assertThat(rows).isNotEmpty();
        for (var question : Built.all(built.results().get("questions"))) {
            assertThat(rows)
                    .as(question.get("asks").asText())
                    .anySatisfy(r -> assertThat(r)
                            .startsWith(question.get("asks").asText())
                            .contains(question.get("name").asText())
                            .contains(question.get("margin-text").asText()));
        }
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("an answer between two devices reads as it does in every other output")
    void answers(Built built) {
        var text = text(built);
        var compared = Built.all(built.results().get("pairs")).stream()
                .filter(p -> p.get("purpose").asText().equals("stated-against-present-device"))
                .filter(p -> p.get("answer").has("difference"))
                .toList();

        assertThat(compared).isNotEmpty();
        assertThat(compared)
                .allSatisfy(p -> assertThat(text)
                        .contains(plain(p.get("answer").get("sentence").asText())));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName(
            "words and counts of the map are those of the pairs: the best standing of any source, how many reach it")
    void comparability(Built built) {
        var cells = Built.all(built.results().get("comparability"));
        assertThat(cells)
                .hasSize(built.results().get("questions").size()
                        * built.results().get("devices").size());
        for (var cell : cells) {
            var sources = sources(
                    built, cell.get("metric").asText(), cell.get("device").asText());
            var best = WORDS.keySet().stream().filter(sources::containsValue).findFirst();
            assertThat(cell.get("sources").asInt()).as(cell.toString()).isEqualTo(sources.size());
            assertThat(cell.get("standing").asText()).isEqualTo(best.orElse("no-data"));
            assertThat(cell.get("word").asText())
                    .isEqualTo(best.map(b -> String.valueOf(WORDS.get(b))).orElse("no data"));
            assertThat(cell.get("reaching").asInt()).isEqualTo((int) sources.values().stream()
                    .filter(s -> best.filter(s::equals).isPresent())
                    .count());
        }
        var words = cells.stream()
                .filter(c -> c.get("sources").asInt() > 0)
                .map(c -> c.get("word").asText() + " " + c.get("reaching").asInt() + "/"
                        + c.get("sources").asInt())
                .toList();
        assertThat(words).isNotEmpty();
        assertThat(mapOf(built)).containsAll(words);
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("no total, score or rank is printed, weights or not, and the cautions are")
    void noTotal(Built built) {
        var text = text(built).toLowerCase(java.util.Locale.ROOT);

        assertThat(text).doesNotContain("score", "total", "ranking", "winner");
        for (var caution : Built.all(built.results().get("cautions"))) {
            assertThat(text).contains(plain(caution.asText()).toLowerCase(java.util.Locale.ROOT));
        }
        assertThat(text)
                .contains(
                        "draft",
                        "invented data",
                        built.results().get("run").get("as-of").asText());
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("what is asked of whom is what the letters ask, and names each recipient")
    void asked(Built built) {
        var text = text(built);

        for (var request : Built.all(built.results().get("requests"))) {
            assertThat(text).contains(request.get("to").asText() + ":");
            for (var item : Built.all(request.get("items"))) {
                if (!item.get("printed").asText().isEmpty()) {
                    assertThat(text)
                            .contains(plain(item.get("printed").asText()) + " ("
                                    + item.get("about").asText() + ")");
                }
            }
        }
    }

    /** The best standing of each source, by its number. */
    private static Map<String, String> sources(Built built, String metric, String device) {
        var sources = new LinkedHashMap<String, String>();
        for (var pair : Built.all(built.results().get("pairs"))) {
            if (!pair.get("metric").asText().equals(metric)) {
                continue;
            }
            var ours = built.comparand(pair.get("ours").asText());
            var theirs = built.comparand(pair.get("theirs").asText());
            switch (pair.get("purpose").asText()) {
                case "local-against-published" -> {
                    if (is(ours, device)) {
                        put(sources, theirs, pair.get("standing").asText());
                    }
                }
                case "stated-against-present-device" -> {
                    if (is(ours, device)) {
                        put(sources, ours, pair.get("standing").asText());
                    } else if (is(theirs, device)) {
                        put(sources, theirs, converted(theirs) ? "same-after-conversion" : "same");
                    }
                }
                default -> {}
            }
        }
        return sources;
    }

    private static boolean converted(JsonNode comparand) {
        return Built.all(comparand.get("steps")).stream()
                .map(s -> s.get("kind").asText())
                .anyMatch(k -> !k.equals("printed"));
    }

    private static boolean is(JsonNode comparand, String device) {
        return comparand.get("device").asText().equals(device);
    }

    private static void put(Map<String, String> sources, JsonNode published, String standing) {
        var order = new ArrayList<>(WORDS.keySet());
        sources.merge(
                published.get("locator").asText().replaceFirst(":.*", ""),
                standing,
                (a, b) -> order.indexOf(a) <= order.indexOf(b) ? a : b);
    }

    private static List<String> mapOf(Built built) {
        return TaggedPdf.of(file(built)).all("Table").stream()
                .filter(t -> t.text().contains("no data") && t.text().startsWith("Device"))
                .flatMap(t -> t.all("TD").stream())
                .map(Element::text)
                .map(CommitteeBriefTest::plain)
                .toList();
    }

    private static List<String> rows(Built built, String heading) {
        return TaggedPdf.of(file(built)).all("Table").stream()
                .filter(t -> t.text().contains(heading))
                .flatMap(t -> t.children().get(1).all("TR").stream())
                .map(Element::text)
                .map(CommitteeBriefTest::plain)
                .toList();
    }

    private static String text(Built built) {
        return ReadBack.pdf(file(built));
    }

    private static String plain(String text) {
        return text.replaceAll("[\\s\u00a0]+", " ");
    }

    private static Path file(Built built) {
        return built.folder().resolve("committee-brief.pdf");
    }
}
