package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import comparand.support.Built;
import comparand.support.PdfConformance;
import comparand.support.ReadBack;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The two months of the demo, and what the ledger of them says. What is expected was written down before the ledger was: a
 * correction that moves no answer, a figure that becomes a mean, a rule left alone, four more cases, a retraction.
 */
class ChangesCommandTest {

    private static final String DOSSIER = "evidence/dossiers/small-oxygenators.yaml";

    @TempDir
    private static Path folder;

    private static Path october;
    private static Path november;
    private static JsonNode ledger;
    private static String text;

    @BeforeAll
    static void bothMonths() throws IOException {
        october = built("2026-10");
        november = built("2026-11");
        var json = folder.resolve("ledger.json");
        var run = CommandLineUse.run("changes", october + "", november + "", "--out", json + "");
        assertThat(run.code()).as(run.err()).isZero();
        ledger = new ObjectMapper().readTree(json.toFile());
        text = run.out();
    }

    private static Path built(String month) {
        var out = folder.resolve(month);
        var run = CommandLineUse.run(
                "build", DOSSIER, "--over", "evidence/dated/" + month, "--for", "evidence", "--out", out + "");
        assertThat(run.code()).as(run.err()).isZero();
        return out.resolve("small-oxygenators");
    }

    @Test
    @DisplayName("the ledger lists these changes, in this order, and no other")
    void changes() {
        assertThat(said(ledger.get("changes"), "group", "what", "before", "after"))
                .containsExactly(
                        "source | ardley-2023 | current | corrected",
                        "source | farrow-2019 | current | retracted",
                        "value | Mirrowen 12, pressure drop (B22, ardley-2023) | 59.1 (3.1) mmHg, 5 units | 51.9 (3.1) mmHg, 5 units",
                        "value | Quillane 15, pressure drop (B05, quillane-ifu-c) | 65 mmHg | 65 (5) mmHg, 10 units",
                        "aside | Mirrowen 12, normalised index of haemolysis (B34, farrow-2019) | takes part"
                                + " | Retracted: notice of 2022-05: raw data could not be produced",
                        "local | Period of three-hospitals | March to October 2026 | March to November 2026",
                        "local | Skarrow Kid, cases (three-hospitals, St Aldwyn) | 6 | 10",
                        "price | Costs | not there | 6 items, 2 without a price");
    }

    @Test
    @DisplayName("the correction of S4 moves no answer: its pair stood at Conditions differ, and does")
    void correction() {
        var change = change("B22");

        assertThat(change.get("why").asText()).contains("digits transposed", "2026-10-20");
        assertThat(plain(change.get("effect")))
                .isEqualTo("No answer changes; its pair stands as before: Conditions differ");
        assertThat(answers("B22")).isEmpty();
    }

    @Test
    @DisplayName(
            "B05 becomes testable by the maker's letter; the interval is Welch's of 72.4 (4.1), n 6, and 65 (5), n 10")
    void testable() throws IOException {
        var answer = answers("B05").get(0);

        assertThat(answer.get("kind").asText()).isEqualTo("another");
        assertThat(plain(answer.get("before"))).contains("Cannot be tested as a difference of two means");
        assertThat(plain(answer.get("after"))).contains("higher; whether by as much as 10 mmHg is not settled");
        assertThat(causes(answer)).containsExactly(change("B05").get("number").asInt());
        assertThat(plain(change("B05").get("why"))).startsWith("Harrowmere Perfusion wrote on 2026-11-23");

        // Welch (1947) from the printed summaries; their rounding (72.4, 4.1) moves the limits by less than 0.1
        double ours = 4.1 * 4.1 / 6;
        double theirs = 5.0 * 5.0 / 10;
        double df = Math.pow(ours + theirs, 2) / (ours * ours / 5 + theirs * theirs / 9);
        double half = new TDistribution(df).inverseCumulativeProbability(0.975) * Math.sqrt(ours + theirs);
        var d = pair(november, "B05").get("answer").get("difference");
        assertThat(d.get("interval").get("low").asDouble()).isCloseTo(72.4 - 65 - half, within(0.1));
        assertThat(d.get("interval").get("high").asDouble()).isCloseTo(72.4 - 65 + half, within(0.1));
        assertThat(plain(answer.get("after"))).startsWith("+7.4 (2.4 to 12.4)");
    }

    @Test
    @DisplayName("no rule changed, and the tolerance of haemoglobin that the dossier sets is named as left alone")
    void rules() {
        assertThat(said(ledger.get("changes"), "group")).doesNotContain("rule", "question", "tool");
        assertThat(texts(ledger.get("left-alone")))
                .anySatisfy(t ->
                        assertThat(t).startsWith("No rule changed").contains("haemoglobin for pressure drop ± 1 g/dL"))
                .anySatisfy(t -> assertThat(t).startsWith("The same 12 questions"));
    }

    @Test
    @DisplayName("four more cases are the cause of every answer that rests on them, of one adjusted P, and of no other")
    void cases() {
        int cases = change("St Aldwyn").get("number").asInt();
        var by = Built.all(ledger.get("answers")).stream()
                .filter(a -> causes(a).contains(cases))
                .toList();

        assertThat(by).allSatisfy(a -> assertThat(causes(a)).containsExactly(cases));
        // what rests on Skarrow cases of St Aldwyn; Lake Ferran, the bench and the other devices do not
        assertThat(by.stream().filter(a -> !a.get("kind").asText().equals("adjusted")))
                .hasSize(10)
                .allSatisfy(a -> assertThat(a.get("pair").asText())
                        .startsWith("three-hospitals/")
                        .contains("skarrow-kid")
                        .doesNotContain("Lake Ferran"));
        assertThat(by.stream().filter(a -> a.get("kind").asText().equals("adjusted")))
                .hasSize(1)
                .allSatisfy(a ->
                        assertThat(a.get("because").asText()).startsWith("Adjusted together with other comparisons"));
        assertThat(plain(change("St Aldwyn").get("effect")))
                .isEqualTo("another answer: 1; other reasons: 1; other numbers: 8; another adjusted P: 1");
    }

    @Test
    @DisplayName("S9 was shown and never compared: one sentence disappears, and no comparison falls away")
    void retraction() throws IOException {
        var gone = answers("B34");

        assertThat(gone).hasSize(1);
        assertThat(gone.get(0).get("kind").asText()).isEqualTo("gone");
        assertThat(plain(gone.get(0).get("before"))).startsWith("shown, not compared: ");
        assertThat(plain(gone.get(0).get("after"))).contains("one sentence less", "no comparison falls away");
        assertThat(pair(october, "B34").get("standing").asText()).isEqualTo("not-reported");
        assertThat(causes(gone.get(0)))
                .containsExactly(
                        number("source | farrow-2019 | current | retracted"),
                        change("B34").get("number").asInt());
    }

    @Test
    @DisplayName("every answer is the same, not the same, gone or new; a source with another number changes none")
    void counts() throws IOException {
        var before = read(october).get("pairs").size();
        var after = read(november).get("pairs").size();
        long gone = said(ledger.get("answers"), "kind").stream()
                .filter("gone"::equals)
                .count();

        assertThat(before - after).isEqualTo((int) gone).isEqualTo(1);
        assertThat(ledger.get("same").asInt() + ledger.get("answers").size() - gone)
                .isEqualTo(after);
        // B31 is source 8 in October and 7 in November, and stands in the sentence by its number
        assertThat(pair(october, "B31").get("answer").get("sentence").asText()).contains("(8:p6)");
        assertThat(pair(november, "B31").get("answer").get("sentence").asText()).contains("(7:p6)");
        assertThat(answers("B31")).isEmpty();
    }

    @Test
    @DisplayName("a run against itself changed in nothing")
    void nothing() {
        var run = CommandLineUse.run("changes", october + "", october.resolve("results.json") + "");

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Answers the same in every number: 63", "No rule changed");
        assertThat(run.out().lines().filter(l -> l.strip().equals("None"))).hasSize(2);
    }

    @Test
    @DisplayName("text, pages and workbook hold the same answers and the word of invented data; the same bytes again")
    void outputs() throws IOException {
        var pdf = folder.resolve("what.pdf");
        var xlsx = folder.resolve("what.xlsx");
        var again = folder.resolve("again.pdf");
        assertThat(CommandLineUse.run("changes", october + "", november + "", "--out", pdf + "", "--out", xlsx + "")
                        .code())
                .isZero();
        assertThat(CommandLineUse.run("changes", october + "", november + "", "--out", again + "")
                        .code())
                .isZero();
        var sheets = String.join(
                "\n", ReadBack.workbook(xlsx).stream().flatMap(List::stream).toList());

        for (var output : List.of(ReadBack.pdf(pdf), sheets, text)) {
            assertThat(output.replace('\u00a0', ' ').replaceAll("\\s+", " "))
                    .contains("Invented data", "No rule changed", "4: B05 was completed by letter");
        }
        assertThat(again).hasSameBinaryContentAs(pdf);
        assertThat(PdfConformance.againstUa1(pdf)).isEmpty();
        assertThat(PdfConformance.againstA2a(pdf)).isEmpty();
        // what is there is kept: the same content is no fault, another is
        assertThat(CommandLineUse.run("changes", october + "", november + "", "--out", pdf + "")
                        .code())
                .isZero();
        var other = CommandLineUse.run("changes", november + "", november + "", "--out", pdf + "");
        assertThat(other.code()).isEqualTo(2);
        assertThat(other.err()).contains("output-exists");
        assertThat(again).hasSameBinaryContentAs(pdf);
    }

    @Test
    @DisplayName("in German the ledger is told in German")
    void german() {
        var run = CommandLineUse.run("changes", october + "", november + "", "--language", "de");

        assertThat(run.out()).contains("Keine Regel wurde geändert", "B05 wurde brieflich ergänzt", "Erfundene Daten");
    }

    @Test
    @DisplayName("files and library: what was laid over is among the inputs by the name of the file that was read")
    void laidOver() throws IOException {
        var over = new TreeMap<String, String>();
        read(november).get("run").get("inputs").forEach(i -> {
            if (i.has("laid-over")) {
                over.put(i.get("file").asText(), i.get("laid-over").asText());
            }
        });

        assertThat(over).allSatisfy((file, read) -> assertThat(read).isEqualTo("dated/2026-11/" + file));
        assertThat(over.keySet())
                .containsExactly(
                        "dossiers/small-oxygenators.yaml",
                        "sources/quillane-ifu-c.yaml",
                        "studies/three-hospitals/st-aldwyn.xlsx",
                        "studies/three-hospitals/study.yaml");
        assertThat(said(ledger.get("files"), "file"))
                .contains("sources/ardley-2023.yaml", "sources/quillane-ifu-c.yaml");
    }

    private static JsonNode read(Path run) throws IOException {
        return new ObjectMapper().readTree(Files.readAllBytes(run.resolve("results.json")));
    }

    private static JsonNode pair(Path run, String theirs) throws IOException {
        return Built.all(read(run).get("pairs")).stream()
                .filter(p -> p.get("theirs").asText().equals(theirs))
                .findFirst()
                .orElseThrow();
    }

    private static List<JsonNode> answers(String value) {
        return Built.all(ledger.get("answers")).stream()
                .filter(a -> a.get("pair").asText().endsWith(" | " + value))
                .toList();
    }

    /** The last change whose name holds a text. */
    private static JsonNode change(String what) {
        return Built.all(ledger.get("changes")).stream()
                .filter(c -> c.get("what").asText().contains(what))
                .reduce((a, b) -> b)
                .orElseThrow();
    }

    private static int number(String change) {
        return said(ledger.get("changes"), "group", "what", "before", "after").indexOf(change) + 1;
    }

    private static List<Integer> causes(JsonNode answer) {
        return Built.all(answer.get("causes")).stream().map(JsonNode::asInt).toList();
    }

    private static List<String> texts(JsonNode list) {
        return Built.all(list).stream().map(ChangesCommandTest::plain).toList();
    }

    private static List<String> said(JsonNode list, String... keys) {
        return Built.all(list).stream()
                .map(n -> String.join(
                        " | ", List.of(keys).stream().map(k -> plain(n.get(k))).toList()))
                .toList();
    }

    private static String plain(JsonNode text) {
        return text.asText().replace('\u00a0', ' ');
    }
}
