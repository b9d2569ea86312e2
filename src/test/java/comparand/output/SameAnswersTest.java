package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.Built;
import comparand.support.OutputTexts;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The same comparison reads the same wherever it is printed. */
class SameAnswersTest {

    private static final List<String> OUTPUTS = List.of(
            "evidence-workbook.xlsx",
            "evidence-table.pdf",
            "committee-brief.pdf",
            "talk.pptx",
            "manuscript.docx",
            "page.html");

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName(
            "the answer on every local pair against the present device stands word for word wherever all pairs stand")
    void everywhere(Built built) {
        var texts = joined(built);
        var pairs = Built.all(built.results().get("pairs")).stream()
                .filter(p -> p.get("purpose").asText().equals("against-present-device"))
                .filter(p -> p.get("answer").get("kind").asText().equals("tested"))
                .toList();

        assertThat(pairs).isNotEmpty();
        assertThat(texts.keySet()).containsAll(OUTPUTS);
        // two pages hold a selection of the pairs
        var whole =
                OUTPUTS.stream().filter(o -> !o.equals("committee-brief.pdf")).toList();
        assertThat(whole)
                .allSatisfy(output -> assertThat(pairs)
                        .allSatisfy(
                                pair -> assertThat(texts.get(output)).as(output).contains(sentence(pair))));
    }

    @Test
    @DisplayName("the firmest finding of the demo is told with the same difference and interval in all outputs")
    void firmest() {
        var texts = joined(Built.demo());

        assertThat(OUTPUTS.stream().filter(o -> !o.equals("evidence-workbook.xlsx")))
                .allSatisfy(output -> assertThat(texts.get(output)).as(output).contains("+17.2", "12.8 to 21.6"));
        assertThat(texts.get("evidence-workbook.xlsx")).contains("+17.2", "12.8", "21.6");
    }

    private static String sentence(JsonNode pair) {
        return folded(pair.get("answer").get("sentence").asText());
    }

    private static Map<String, String> joined(Built built) {
        var texts = new TreeMap<String, String>();
        OutputTexts.of(built).forEach((file, read) -> texts.put(file, folded(String.join("\n", read))));
        return texts;
    }

    /** Blanks and capitals at the beginning of a cell are a matter of layout. */
    private static String folded(String text) {
        return text.replaceAll("[\\s\u00a0]+", " ").toLowerCase(Locale.ROOT);
    }
}
