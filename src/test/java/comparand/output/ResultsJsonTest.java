package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.Built;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What may be relied on in results.json, whatever the devices and metrics. */
class ResultsJsonTest {

    private static final Set<String> COMPARED = Set.of("same", "same-after-conversion");

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("ids are unique; a pair, an unpaired value and a value set aside name values that are there")
    void namesLeadSomewhere(Built built) {
        var values = names(built, "comparands", "id");
        var metrics = names(built, "questions", "metric");

        assertThat(values).doesNotHaveDuplicates();
        assertThat(names(built, "pairs", "id")).doesNotHaveDuplicates();
        assertThat(names(built, "sources", "id")).doesNotHaveDuplicates();
        assertThat(values).containsAll(names(built, "pairs", "ours")).containsAll(names(built, "pairs", "theirs"));
        assertThat(values).containsAll(names(built, "unpaired", "comparand"));
        assertThat(values).containsAll(names(built, "set-aside", "value"));
        assertThat(metrics).doesNotHaveDuplicates().containsAll(names(built, "pairs", "metric"));
        assertThat(names(built, "devices", "id"))
                .contains(built.results().get("run").get("present-device").asText());
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("sources are numbered from 1, and the locator of a published value begins with the number of a source")
    void locators(Built built) {
        var numbers = names(built, "sources", "number");

        for (int i = 0; i < numbers.size(); i++) {
            assertThat(numbers.get(i)).isEqualTo(String.valueOf(i + 1));
        }
        assertThat(comparands(built))
                .filteredOn(c -> is(c, "side", "published"))
                .isNotEmpty()
                .allSatisfy(c ->
                        assertThat(numbers).contains(c.get("locator").asText().replaceFirst(":.*", "")))
                .allSatisfy(c -> assertThat(c.get("printed").asText()).isNotBlank());
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("a pair has a verdict for every condition that decides, unless it is of two quantities")
    void verdictsForAllThatDecides(Built built) {
        var deciding = Built.all(built.results().get("questions")).stream()
                .collect(Collectors.toMap(q -> q.get("metric").asText(), ResultsJsonTest::deciding));

        assertThat(pairs(built))
                .filteredOn(p -> conditions(p).stream().noneMatch(v -> is(v, "id", "quantity")))
                .isNotEmpty()
                .allSatisfy(p -> assertThat(conditions(p).stream()
                                .filter(v -> is(v, "of", "condition"))
                                .map(v -> v.get("id").asText()))
                        .as(p.get("id").asText())
                        .containsAll(deciding.getOrDefault(p.get("metric").asText(), Set.of())));
        assertThat(pairs(built))
                .filteredOn(p -> conditions(p).stream().anyMatch(v -> is(v, "id", "quantity")))
                .allSatisfy(p -> assertThat(p.get("standing").asText()).isEqualTo("different-quantity"));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("a pair is compared if nothing that decides differs or is unknown, and only then")
    void standingFollowsFromVerdicts(Built built) {
        assertThat(pairs(built)).allSatisfy(p -> {
            boolean against = conditions(p).stream()
                    .anyMatch(v -> is(v, "role", "decides")
                            && (is(v, "verdict", "differs") || is(v, "verdict", "not-reported")));
            assertThat(COMPARED.contains(p.get("standing").asText()))
                    .as(p.get("id").asText())
                    .isNotEqualTo(against);
            assertThat(p.get("to-make-comparable").asText().isEmpty()).isNotEqualTo(against);
        });
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("only a pair that is compared carries a difference, and it is ours minus theirs")
    void differences(Built built) {
        var values = comparands(built).stream()
                .filter(c -> c.get("summary").has("value"))
                .collect(Collectors.toMap(
                        c -> c.get("id").asText(), c -> c.get("summary").get("value")));
        var withDifference = pairs(built).stream()
                .filter(p -> p.get("answer").has("difference"))
                .toList();

        assertThat(withDifference).isNotEmpty();
        assertThat(withDifference).allSatisfy(p -> {
            var difference = p.get("answer").get("difference");
            assertThat(COMPARED).contains(p.get("standing").asText());
            assertThat(difference.get("value").asDouble())
                    .as(p.get("id").asText())
                    .isCloseTo(value(values, p, "ours") - value(values, p, "theirs"), within(1e-9));
            if (difference.has("interval")) {
                assertThat(difference.get("value").asDouble())
                        .isBetween(
                                difference.get("interval").get("low").asDouble(),
                                difference.get("interval").get("high").asDouble());
            }
        });
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("a second reading of a spread is printed under shown as it is in the sentence")
    void oneDifferenceOnePrint(Built built) {
        assertThat(pairs(built))
                .filteredOn(p -> p.get("answer").has("if-standard-error"))
                .allSatisfy(p -> assertThat(p.get("answer").get("sentence").asText())
                        .contains(p.get("answer")
                                .get("if-standard-error")
                                .get("shown")
                                .asText()));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("where two readings of a spread disagree, neither stands alone as the verdict")
    void neitherReadingAlone(Built built) {
        assertThat(pairs(built))
                .map(p -> p.get("answer"))
                .filteredOn(a -> a.has("if-standard-error")
                        && !is(
                                a.get("difference"),
                                "verdict",
                                a.get("if-standard-error").get("verdict").asText()))
                .allSatisfy(a -> assertThat(a.get("sentence").asText())
                        .doesNotStartWith("read as standard deviation: "
                                + a.get("verdict").asText()));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("an answer of two readings is not said to hold for every margin beyond that of one of them")
    void noMarginForBothReadings(Built built) {
        assertThat(pairs(built))
                .filteredOn(p -> p.get("answer").has("if-standard-error"))
                .allSatisfy(p -> assertThat(Built.all(p.get("remarks")).stream().map(JsonNode::asText))
                        .noneMatch(r -> r.contains("holds for any margin")));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("the form of a summary is set beside a form, and never beside a unit")
    void formBesideForm(Built built) {
        var forms = pairs(built).stream()
                .flatMap(p -> conditions(p).stream())
                .filter(v -> is(v, "of", "unit") && is(v, "id", "spread"))
                .map(v -> v.get("ours").asText())
                .distinct()
                .toList();
        var units = Built.all(built.results().get("questions")).stream()
                .map(q -> q.get("unit").asText())
                .toList();

        assertThat(forms).isNotEmpty().doesNotContainAnyElementsOf(units);
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("every value has a trail, and the trail of a published value begins in print and quotes it")
    void trails(Built built) {
        assertThat(comparands(built)).allSatisfy(c -> {
            assertThat(Built.all(c.get("steps"))).as(c.get("id").asText()).isNotEmpty();
            var first = c.get("steps").get(0);
            boolean published = is(c, "side", "published");
            assertThat(first.get("kind").asText().equals("printed")).isEqualTo(published);
            assertThat(first.get("facts").has("quote")).isEqualTo(published);
        });
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("what is set aside has a reason, and the family of adjusted p values is as large as is said")
    void reasonsAndFamily(Built built) {
        assertThat(Built.all(built.results().get("set-aside"))).allSatisfy(a -> {
            assertThat(a.get("reason").asText())
                    .isIn("retracted", "superseded", "preprint", "same-study", "left-out", "held");
            assertThat(a.get("words").asText()).isNotBlank();
        });
        var adjusted = pairs(built).stream()
                .filter(p -> p.get("answer").has("adjusted-p"))
                .toList();
        assertThat(adjusted)
                .hasSize(built.results().get("run").get("family-size").asInt());
        assertThat(adjusted)
                .isNotEmpty()
                .allSatisfy(p -> assertThat(p.get("answer").get("adjusted-p").asDouble())
                        .isBetween(p.get("answer").get("difference").get("p").asDouble(), 1.0));
    }

    private static List<String> names(Built built, String part, String key) {
        return Built.all(built.results().get(part)).stream()
                .map(n -> n.get(key).asText())
                .toList();
    }

    private static List<JsonNode> pairs(Built built) {
        return Built.all(built.results().get("pairs"));
    }

    private static List<JsonNode> comparands(Built built) {
        return Built.all(built.results().get("comparands"));
    }

    private static List<JsonNode> conditions(JsonNode pair) {
        return Built.all(pair.get("conditions"));
    }

    private static Set<String> deciding(JsonNode question) {
        return Built.all(question.get("tolerances")).stream()
                .filter(t -> is(t, "role", "decides"))
                .map(t -> t.get("condition").asText())
                .collect(Collectors.toSet());
    }

    private static double value(Map<String, JsonNode> values, JsonNode pair, String side) {
        Function<String, JsonNode> find = id -> values.getOrDefault(id, pair);
        return find.apply(pair.get(side).asText()).asDouble();
    }

    private static boolean is(JsonNode node, String key, String value) {
        return node.get(key).asText().equals(value);
    }
}
