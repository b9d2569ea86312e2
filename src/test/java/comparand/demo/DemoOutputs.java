package comparand.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.Built;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** What the demo wrote, looked at as its tests need it. */
final class DemoOutputs {

    private static final Built DEMO = Built.demo();

    private DemoOutputs() {}

    static String shown(JsonNode pair) {
        return pair.get("answer").get("difference").get("shown").asText();
    }

    static double difference(JsonNode pair) {
        return pair.get("answer").get("difference").get("value").asDouble();
    }

    static String mark(JsonNode pair, String condition) {
        return Built.all(pair.get("conditions")).stream()
                .filter(c -> c.get("id").asText().equals(condition))
                .findFirst()
                .map(c -> c.get("verdict").asText())
                .orElse("absent");
    }

    static List<String> texts(JsonNode list) {
        return Built.all(list).stream().map(JsonNode::asText).toList();
    }

    static String rounded(JsonNode range, int decimals) {
        return (fixed(range.get("low").asDouble(), decimals) + " to "
                        + fixed(range.get("high").asDouble(), decimals))
                .replace('-', '−');
    }

    private static String fixed(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }

    static void inBoth(String inPdf, String inWorkbook) {
        assertThat(DEMO.pdf()).contains(inPdf);
        assertThat(cells()).anySatisfy(c -> assertThat(c).contains(inWorkbook));
    }

    static void nowhere(String... texts) {
        for (var text : texts) {
            assertThat(DEMO.pdf()).doesNotContain(text);
            assertThat(cells()).noneMatch(c -> c.contains(text));
        }
    }

    private static List<String> cells() {
        return DEMO.workbook().stream()
                .flatMap(List::stream)
                .map(c -> c.replace('\u00a0', ' '))
                .toList();
    }
}
