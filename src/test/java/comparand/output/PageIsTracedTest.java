package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import comparand.support.Built;
import comparand.support.NumberTokens;
import comparand.support.TracedNumbers;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No number of the page is its own, and each leads back to where it is from. */
class PageIsTracedTest {

    /** Shows by example what a locator is, and is no evidence. */
    private static final String EXEMPT = "4:T2r3(: source 4, Table 2, row 3)?";

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("every number that stands on the page stands in results.json, or rounds from one there")
    void everyNumber(Built built) throws IOException {
        var results = new TracedNumbers(List.of(built.results()));
        var texts = page(built).select("h1, h2, h3, p, li, .v, summary, figcaption").stream()
                .map(Element::ownText)
                .map(t -> t.replaceAll(EXEMPT, " "))
                .toList();

        assertThat(texts.stream().flatMap(t -> NumberTokens.of(t).stream())).hasSizeGreaterThan(500);
        assertThat(texts.stream()
                        .flatMap(t -> results.untraced(t).stream()
                                .filter(n -> !built.hasYear(n))
                                .map(n -> n + " in " + (t.length() > 200 ? t.substring(0, 200) : t)))
                        .distinct())
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("both numbers of every pair lead to their ladders, which hold every step of results.json")
    void ladders(Built built) throws IOException {
        var page = page(built);
        var data = new ObjectMapper().readTree(page.expectFirst("#exploration").data());
        var pairs = Built.all(data.get("questions")).stream()
                .flatMap(q -> Built.all(q.get("pairs")).stream())
                .toList();

        assertThat(pairs).hasSameSizeAs(Built.all(built.results().get("pairs")));
        assertThat(pairs).allSatisfy(p -> {
            var sides = p.get("id").asText().split(" \\| ", -1);
            holds(page, p.get("ours").asText(), value(built, sides[0]));
            holds(page, p.get("theirs").asText(), value(built, sides[1]));
        });
        assertThat(page.select("details.ladder"))
                .hasSameSizeAs(Built.all(built.results().get("comparands")));
    }

    private static void holds(Document page, String ladder, JsonNode value) {
        assertThat(page.select("a[href=#v-%s]".formatted(ladder)))
                .as("a link to " + ladder)
                .isNotEmpty();
        var rungs =
                page.expectFirst("details[id=v-%s]".formatted(ladder)).text().replace('\u00a0', ' ');
        assertThat(Built.all(value.get("steps")))
                .allSatisfy(
                        s -> assertThat(rungs).contains(s.get("text").asText().replace('\u00a0', ' ')));
        assertThat(rungs).contains(value.get("locator").asText());
    }

    private static JsonNode value(Built built, String id) {
        return Built.all(built.results().get("comparands")).stream()
                .filter(c -> c.get("id").asText().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Document page(Built built) throws IOException {
        return Jsoup.parse(built.folder().resolve("page.html"));
    }
}
