package comparand.browser;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import comparand.app.CommandLineUse;
import comparand.support.Built;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the page works out in the browser is what the tool works out: the demo is built with another margin or another tolerance
 * in its dossier, and the page of the demo as it is, with that margin or tolerance set on it, says the same.
 */
class PageAgreesBrowserIT {

    private static final String DOSSIER = "dossiers/small-oxygenators.yaml";

    /** Both sides print every digit of a double; what is left is the order of a product. */
    private static final double LAST_DIGITS = 1e-9;

    /** A judgement of all pairs as data: what {@code Judging} says, with what the scripts say beside it. */
    private static final String JUDGED = """
            const data = JSON.parse(document.getElementById('exploration').textContent);
            const say = Words.sayer(data.words);
            const judged = Judging.judgeOf(data)({...Judging.REPORT, ...JSON.parse(arguments[0])});
            return JSON.stringify(judged.questions.flatMap(q => q.pairs.map(j => ({
              id: j.pair.id, standing: j.standing, sentence: j.sentence, difference: j.difference, theirs: j.theirs,
              codes: j.codes, marks: j.conditions.map(c => c.mark), remarks: j.remarks,
              distortions: Sentences.distortions(say, j.pair, j.conditions),
              qualifiers: Sentences.qualifiers(say, j.conditions),
              toMakeComparable: j.compared ? '' : Sentences.toMakeComparable(say, j.conditions),
              flips: j.codes.map((c, i) => j.pair.answer.readings[i].p === undefined || q.margin.value === null
                ? null : Margins.flipsAt(c, j.pair.answer.readings[i])),
              ranges: j.codes.map((c, i) => j.pair.answer.readings[i].p === undefined || q.margin.value === null
                ? null : Margins.range(c, j.pair.answer.readings[i])),
            }))));
            """;

    private static final ObjectMapper JSON = new ObjectMapper();

    private static final Browser BROWSER = Browser.start();

    @TempDir
    Path folder;

    @BeforeAll
    static void open() throws IOException {
        BROWSER.open(DemoPage.file());
    }

    @AfterAll
    static void close() {
        BROWSER.close();
    }

    @Test
    @DisplayName("with the settings of the report the page says every answer of the report to the letter")
    void report() throws IOException {
        assertThat(judged("{}").values())
                .hasSize(Built.demo().results().get("pairs").size());
        agree(Built.demo().results(), judged("{}"), true, List.of());
    }

    @ParameterizedTest(name = "margins {0} times as wide")
    @CsvSource({"0.5, 5, 2.5, 0.025", "1.5, 15, 7.5, 0.075", "3, 30, 15, 0.15"})
    @DisplayName("with other margins it says what a report with those margins says")
    void margins(double times, String ten, String five, String ratio) throws IOException {
        var evidence = LibraryCopy.of(Path.of("evidence"), folder.resolve("library"));
        var dossier = evidence.resolve(DOSSIER);
        // those of 5 first: one of 10 may become one of 5
        LibraryCopy.edit(dossier, "margin: 5 ", "margin: " + five + " ");
        LibraryCopy.edit(dossier, "margin: 10 ", "margin: " + ten + " ");
        LibraryCopy.edit(dossier, "margin: 0.05\n", "margin: " + ratio + "\n");

        var set = new ArrayList<String>();
        Built.all(Built.demo().results().get("questions")).stream()
                .filter(q -> q.has("margin"))
                .forEach(q -> set.add("\"%s\":%s"
                        .formatted(
                                q.get("metric").asText(),
                                number(q.get("margin-text").asText(), ten, five, ratio))));

        assertThat(set).hasSize(8);
        var changed =
                agree(results(evidence), judged("{\"margins\":{" + String.join(",", set) + "}}"), true, List.of());
        assertThat(changed).as("answers that are not those of the report").isGreaterThan(5);
        assertThat(times).isPositive();
    }

    private static String number(String margin, String ten, String five, String ratio) {
        return margin.startsWith("10") ? ten : margin.startsWith("5") ? five : ratio;
    }

    @ParameterizedTest(name = "{0} of {1} within {2}")
    @CsvSource({
        "haemoglobin, pressure-drop, 2 g/dL, 2, 1",
        "haemoglobin, pressure-drop, 0.1 g/dL, 0.1, 0",
        "temperature, pressure-drop, 12 Cel, 12, 0",
        "blood-flow, pressure-drop, 60 % of the value, 60, 0",
        "blood-flow, oxygen-transfer, 0.5 % of the value, 0.5, 0",
        "haemoglobin, oxygen-transfer, 4 g/dL, 4, 0",
        "haematocrit, normalised-index-of-haemolysis, 9 percentage points, 9, 0",
        "temperature, normalised-index-of-haemolysis, 0.5 Cel, 0.5, 0"
    })
    @DisplayName(
            "with another tolerance it says of every pair that stays a pair what a report with that tolerance says")
    void tolerances(String condition, String metric, String within, String amount, int fewest) throws IOException {
        var evidence = LibraryCopy.of(Path.of("evidence"), folder.resolve("library"));
        LibraryCopy.edit(
                evidence.resolve(DOSSIER),
                "tolerances:\n  - condition: haemoglobin\n    metric: pressure-drop\n    within: 1 g/dL",
                "tolerances:\n"
                        + (condition.equals("haemoglobin") && metric.equals("pressure-drop")
                                ? ""
                                : "  - {condition: %s, metric: %s, within: %s, set: 2026-09-01, reason: tried}\n"
                                        .formatted(condition, metric, within))
                        + "  - condition: haemoglobin\n    metric: pressure-drop\n    within: "
                        + (condition.equals("haemoglobin") && metric.equals("pressure-drop") ? within : "1 g/dL"));
        var results = results(evidence);

        var judged = judged("{\"tolerances\":{\"%s/%s\":%s}}".formatted(metric, condition, amount));

        var changed = agree(results, judged, false, others(results));
        assertThat(changed).isGreaterThanOrEqualTo(fewest);
    }

    /** Pairs whose numbers are not those of the report: under another tolerance our results may be chosen otherwise. */
    private static List<String> others(JsonNode results) {
        var report = summaries(Built.demo().results());
        var now = summaries(results);
        var before = new HashMap<String, JsonNode>();
        Built.all(Built.demo().results().get("pairs"))
                .forEach(p -> before.put(p.get("id").asText(), p));
        return Built.all(results.get("pairs")).stream()
                .filter(p -> !before.containsKey(p.get("id").asText())
                        || Stream.of("ours", "theirs")
                                .map(side -> p.get(side).asText())
                                .anyMatch(value -> !Objects.equals(now.get(value), report.get(value))))
                .map(p -> p.get("id").asText())
                .toList();
    }

    private static Map<String, String> summaries(JsonNode results) {
        var summaries = new HashMap<String, String>();
        Built.all(results.get("comparands"))
                .forEach(c -> summaries.put(c.get("id").asText(), c.get("summary") + " " + c.get("conditions")));
        return summaries;
    }

    private JsonNode results(Path evidence) throws IOException {
        var run = CommandLineUse.run(
                "build", evidence.resolve(DOSSIER).toString(), "--for", "page", "--out", folder.toString());
        assertThat(run.code()).as(run.err()).isZero();
        return JSON.readTree(Files.readString(folder.resolve("small-oxygenators/results.json")));
    }

    private static Map<String, JsonNode> judged(String settings) throws IOException {
        var pairs = new TreeMap<String, JsonNode>();
        JSON.readTree(BROWSER.run(JUDGED, settings).orElseThrow().toString())
                .forEach(p -> pairs.put(p.get("id").asText(), p));
        return pairs;
    }

    /** Holds every pair of a report against the page; gives the number of answers that are not those of the demo's report. */
    private static int agree(JsonNode results, Map<String, JsonNode> page, boolean whole, List<String> without) {
        var report = new HashMap<String, String>();
        Built.all(Built.demo().results().get("pairs"))
                .forEach(p -> report.put(
                        p.get("id").asText(), p.get("answer").get("sentence").asText()));
        int changed = 0;
        int held = 0;
        for (var pair : results.get("pairs")) {
            var id = pair.get("id").asText();
            if (without.contains(id)) {
                continue;
            }
            held++;
            agree(pair, requireNonNull(page.get(id), id), whole);
            if (!pair.get("answer").get("sentence").asText().equals(report.get(id))) {
                changed++;
            }
        }
        assertThat(held).isGreaterThan(50);
        return changed;
    }

    private static void agree(JsonNode java, JsonNode page, boolean whole) {
        var id = java.get("id").asText();
        var answer = java.get("answer");
        assertThat(page.get("sentence").asText())
                .as(id)
                .isEqualTo(answer.get("sentence").asText());
        assertThat(kebab(page.get("standing")))
                .as(id)
                .isEqualTo(java.get("standing").asText());
        assertThat(Built.all(page.get("marks")).stream().map(PageAgreesBrowserIT::kebab))
                .as(id)
                .containsExactlyElementsOf(Built.all(java.get("conditions")).stream()
                        .map(c -> c.get("verdict").asText())
                        .toList());
        assertThat(page.get("distortions")).as(id).isEqualTo(java.get("distortions"));
        assertThat(page.get("qualifiers")).as(id).isEqualTo(java.get("qualifiers"));
        assertThat(page.get("toMakeComparable").asText())
                .as(id)
                .isEqualTo(java.get("to-make-comparable").asText());
        if (whole) {
            assertThat(page.get("remarks")).as(id).isEqualTo(java.get("remarks"));
        }
        assertThat(page.get("difference").asText())
                .as(id)
                .isEqualTo(answer.path("difference").path("shown").asText());
        reading(id, page, 0, answer.path("difference"));
        reading(id, page, 1, answer.path("if-standard-error"));
    }

    private static void reading(String id, JsonNode page, int which, JsonNode difference) {
        if (difference.isMissingNode()) {
            assertThat(page.get("codes").size()).as(id).isLessThanOrEqualTo(which);
            return;
        }
        assertThat(kebab(page.get("codes").get(which)))
                .as(id)
                .isEqualTo(difference.get("verdict").asText());
        limit(id, page.get("flips").get(which), difference.path("flips-at"), 0);
        var range = page.get("ranges").get(which);
        if (!range.isNull()) {
            limit(id, range.get("above"), difference.path("holds-above"), 0);
            limit(id, range.get("below"), difference.path("holds-below"), 0);
        }
    }

    /** A limit that is not there is null or the neutral number in the page, and left out in results. */
    private static void limit(String id, JsonNode page, JsonNode java, double neutral) {
        double is = page.isNull() ? neutral : page.asDouble();
        double should = java.isMissingNode() ? neutral : java.asDouble();
        assertThat(is).as(id).isCloseTo(should, within(LAST_DIGITS * Math.max(1, Math.abs(should))));
    }

    private static String kebab(JsonNode constant) {
        return constant.asText().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
