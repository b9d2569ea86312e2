package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.Built;
import comparand.support.SlidesRead;
import comparand.support.SlidesRead.ReadSlide;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.poi.xslf.usermodel.XMLSlideShow;
import org.apache.poi.xslf.usermodel.XSLFSlide;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The talk read back, for two libraries: what a presenter, a listener and a screen reader need. */
class TalkTest {

    private static final List<String> HEADINGS =
            List.of("SAY", "NUMBERS", "SOURCE", "CONDITIONS", "IF ASKED", "DO NOT SAY", "TIME");

    private static final String INDEX = "Which question shall we look at?";

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    static List<ReadSlide> slides(Built built) {
        return SlidesRead.of(built.folder().resolve("talk.pptx"));
    }

    private static List<ReadSlide> shown(Built built) {
        return slides(built).stream().takeWhile(s -> !s.title().equals(INDEX)).toList();
    }

    private static List<ReadSlide> backup(Built built) {
        var slides = slides(built);
        return slides.subList(shown(built).size(), slides.size());
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("slides are wide, have one title each that no other has, of at most twelve words")
    void titles(Built built) {
        java.awt.Dimension size = SlidesRead.open(built.folder().resolve("talk.pptx"), XMLSlideShow::getPageSize);
        var slides = slides(built);

        assertThat((double) size.width / size.height).isCloseTo(16 / 9.0, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(slides).allMatch(s -> s.titles().size() == 1);
        assertThat(slides).extracting(ReadSlide::title).doesNotHaveDuplicates();
        // a number and its unit, joined by a blank that does not break, are read as one word
        List<String> raw = SlidesRead.open(
                built.folder().resolve("talk.pptx"),
                show -> show.getSlides().stream().map(XSLFSlide::getTitle).toList());
        assertThat(raw).allSatisfy(t -> assertThat(t.split(" ")).as(t).hasSizeLessThanOrEqualTo(12));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("a room can read what is shown: 20 points, and 12 at the foot; 12 on slides for questions")
    void sizes(Built built) {
        assertThat(shown(built)).hasSizeGreaterThan(6).allSatisfy(s -> {
            // strip, link, imprint and number at the foot; headings of the panels of a figure
            assertThat(s.sizes().stream().filter(x -> x < 20).toList())
                    .as(s.title())
                    .allMatch(x -> x == 12 || x == 16)
                    .hasSizeLessThanOrEqualTo(6);
        });
        assertThat(slides(built)).allSatisfy(s -> assertThat(s.sizes()).allMatch(x -> x >= 12));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("notes stand on every slide, in their fixed order, with something under each heading")
    void notes(Built built) {
        assertThat(slides(built)).allSatisfy(s -> {
            assertThat(s.notes().stream().filter(HEADINGS::contains))
                    .as(s.title())
                    .containsExactlyElementsOf(HEADINGS);
            assertThat(HEADINGS)
                    .allSatisfy(h ->
                            assertThat(s.under(h)).as("%s, %s", s.title(), h).isNotEmpty());
        });
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("every slide carries date, state, tool, fingerprint and that the data are invented")
    void marks(Built built) {
        var run = built.results().get("run");

        assertThat(slides(built))
                .allSatisfy(s -> assertThat(String.join("\n", s.texts()))
                        .contains(
                                "Invented data",
                                run.get("as-of").asText(),
                                run.get("state").asText(),
                                run.get("tool").asText(),
                                run.get("fingerprint").asText().substring(0, 8)));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName(
            "questions lead to slides, every slide for a question leads back, and notes name slides that are there")
    void links(Built built) {
        var slides = slides(built);
        int index = shown(built).size() + 1;

        assertThat(slides.get(index - 1).links()).hasSizeGreaterThan(5).doesNotContain(0, index);
        assertThat(backup(built).stream().skip(1))
                .allSatisfy(s -> assertThat(s.links()).as(s.title()).containsExactly(index));
        assertThat(slides.stream().flatMap(s -> s.under("IF ASKED").stream()))
                .hasSizeGreaterThan(20)
                .allSatisfy(line -> assertThat(line).matches(".* → slide \\d+|Nothing on this slide"))
                .filteredOn(line -> line.contains("→"))
                .allSatisfy(line -> assertThat(Integer.parseInt(line.replaceFirst(".*slide ", "")))
                        .isBetween(1, slides.size()));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("the first three questions of a listener have an answer: flow, number of units, source")
    void firstQuestions(Built built) {
        assertThat(shown(built).stream().filter(s -> s.title().startsWith("Firmest")))
                .singleElement()
                .satisfies(s -> {
                    assertThat(String.join("\n", s.texts())).contains("blood flow", "units each", "L:");
                    assertThat(s.under("NUMBERS")).allMatch(n -> n.contains("95 % CI") && n.contains("n = "));
                    assertThat(s.under("SOURCE")).anyMatch(n -> n.contains("raw data in"));
                    assertThat(s.under("CONDITIONS")).anyMatch(n -> n.contains("blood flow"));
                    assertThat(String.join("\n", s.under("IF ASKED")))
                            .contains("At what flow", "How many units", "Says who?");
                });
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("the headline is the comparison whose nearer limit is the largest multiple of its margin")
    void headline(Built built) {
        var firmest = Built.all(built.results().get("pairs")).stream()
                .filter(p -> p.get("purpose").asText().equals("against-present-device"))
                .filter(p -> p.get("answer").get("kind").asText().equals("tested"))
                .filter(p -> margin(built, p).isPresent())
                .max(Comparator.comparingDouble(
                        p -> nearer(p) / margin(built, p).orElseThrow()))
                .orElseThrow();
        double difference = firmest.get("answer").get("difference").get("value").asDouble();
        var headline = shown(built).stream()
                .filter(s -> s.title().startsWith("Firmest"))
                .findFirst()
                .orElseThrow();
        var number = headline.texts().stream()
                .filter(t -> t.matches("(?s)[+−][\\d.]+.*"))
                .findFirst()
                .orElseThrow();

        assertThat(nearer(firmest)).isPositive();
        double printed = Double.parseDouble(number.replace('−', '-').replaceFirst("(?s)^([+-][\\d.]+).*", "$1"));
        assertThat(printed).isCloseTo(difference, org.assertj.core.data.Offset.offset(0.5));
        assertThat(headline.under("NUMBERS").get(0)).contains(rounded(difference));
    }

    private static String rounded(double value) {
        return new java.math.BigDecimal(Math.abs(value))
                .round(new java.math.MathContext(5))
                .toPlainString()
                .substring(0, 4);
    }

    private static double nearer(JsonNode pair) {
        var interval = pair.get("answer").get("difference").get("interval");
        double low = interval.get("low").asDouble();
        double high = interval.get("high").asDouble();
        return low > 0 ? low : high < 0 ? -high : -1;
    }

    private static Optional<Double> margin(Built built, JsonNode pair) {
        return Built.all(built.results().get("questions")).stream()
                .filter(q -> q.get("metric").asText().equals(pair.get("metric").asText()))
                .filter(q -> q.hasNonNull("margin"))
                .map(q -> q.get("margin").asDouble())
                .findFirst();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName(
            "every cell of a table says something, and a published number on a shown slide has its place beside it")
    void cells(Built built) {
        assertThat(slides(built).stream().flatMap(s -> s.rows().stream()).flatMap(List::stream))
                .hasSizeGreaterThan(50)
                .noneMatch(String::isBlank);
        var withSources = shown(built).stream()
                .filter(s -> s.under("SOURCE").stream().anyMatch(l -> l.matches("\\d+:\\S+: .*")))
                .filter(s -> !s.title().startsWith("What we do not know"))
                .toList();
        assertThat(withSources)
                .isNotEmpty()
                .allSatisfy(s ->
                        assertThat(String.join("\n", s.texts())).as(s.title()).containsPattern("\\d+:[A-Zp]\\w+"));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("slides and notes use no forbidden word")
    void words(Built built) {
        var texts = slides(built).stream()
                .flatMap(s -> Stream.concat(s.all().stream(), s.notes().stream()))
                .toList();

        assertThat(texts).hasSizeGreaterThan(300).noneMatch(ForbiddenWordsTest::isForbidden);
    }
}
