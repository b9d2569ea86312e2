package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.Built;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is not known of a small library, edited into each case. */
class UnknownsTest {

    private static final String DOSSIER = "dossiers/example.yaml";
    private static final String STUDY = "studies/example-bench/study.yaml";
    private static final String RUNS = "studies/example-bench/runs.csv";

    @TempDir
    Path folder;

    private Path library = Path.of("");

    @BeforeEach
    void copy() throws IOException {
        library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
    }

    @Test
    @DisplayName(
            "with three hospitals a device the spread between them is planned for, and within them by theirs within")
    void acrossHospitals() throws IOException {
        edit(STUDY, "      note: {holds: ignored}", "      note: {holds: centre}");
        edit(STUDY, "    dropped:\n      - {line: 9, reason: transducer had come loose}\n", "");
        Files.writeString(library.resolve(RUNS), """
                unit,device,flow,p_in,p_out,hb,note
                E-1,E,4.0,260,200,120,A
                E-2,E,4.0,264,200,120,A
                E-3,E,4.0,266,200,120,A
                E-4,E,4.0,270,200,120,B
                E-5,E,4.0,273,200,120,B
                E-6,E,4.0,275,200,120,B
                E-7,E,4.0,256,200,120,C
                E-8,E,4.0,260,200,120,C
                E-9,E,4.0,258,200,120,C
                P-1,P,4.0,266,200,120,A
                P-2,P,4.0,269,200,120,A
                P-3,P,4.0,272,200,120,A
                P-4,P,4.0,274,200,120,B
                P-5,P,4.0,278,200,120,B
                P-6,P,4.0,282,200,120,B
                P-7,P,4.0,263,200,120,C
                P-8,P,4.0,265,200,120,C
                P-9,P,4.0,270,200,120,C
                """);

        var open = unknown("open: example-bench/pressure-drop/example-device/4.0 L/min");
        var plan = open.get("plan");

        // one-way analysis of variance: τ² = (MSB - MSW)/3, the wider of both devices; SD² = MSW of both (SciPy 1.17.1)
        assertThat(plan.get("reach").asText()).isEqualTo("across-hospitals");
        assertThat(plan.get("tau").asDouble()).isCloseTo(7.275020682164826, within(1e-6));
        assertThat(plan.get("cases-each").asInt()).isEqualTo(3);
        assertThat(plan.get("df").asDouble()).isEqualTo(12);
        var width = plan.get("aims").get(1);
        assertThat(width.get("kind").asText()).isEqualTo("exclude-margin");
        assertThat(numbers(width, "sd"))
                .satisfiesExactly(
                        s -> assertThat(s).isCloseTo(2.325134404717284, within(1e-6)),
                        s -> assertThat(s).isCloseTo(3.100179206289712, within(1e-6)),
                        s -> assertThat(s).isCloseTo(3.8434940965826105, within(1e-6)));
        assertThat(numbers(width, "n")).containsExactly(3.0, 3.0, 4.0);
        assertThat(numbers(width, "hospitals")).containsExactly(7.0, 8.0, 8.0);
        assertThat(open.get("settles").toString()).contains("Across hospitals, which differ by an SD of");
    }

    @Test
    @DisplayName(
            "a single result of ours is too few, and what the dossier states plans by itself, without an upper limit")
    void aSingleResult() throws IOException {
        planned("{sd: 8 mmHg, detect: [10 mmHg]}");
        edit(STUDY, "{line: 9,", "{line: 6,");
        edit(RUNS, "E-2,E,4.0,259,194,119,\nE-3,E,4.0,268,200,122,\nE-4,E,4.0,265,204,118,\n", "");

        var single = unknown("unmeasured: example-bench/pressure-drop/example-device/4.0 L/min");

        assertThat(single.get("what").asText()).isEqualTo("Pressure drop: 1\u00a0unit of ours, too few to compare");
        var needed = Built.all(single.get("plan").get("aims").get(0).get("needed"));
        assertThat(needed.stream().map(n -> n.get("which").asText())).containsExactly("smaller", "at-hand");
        // noncentral t, SD 6 and 8, 80 % (SciPy 1.17.1)
        assertThat(needed.stream().map(n -> n.get("n").asInt())).containsExactly(7, 12);
        assertThat(single.get("plan").has("df")).isFalse();
    }

    @Test
    @DisplayName("a device without any result of ours is named, and so is what nobody published")
    void nothingMeasured() throws IOException {
        edit(DOSSIER, "studies: [example-bench]", "studies: []");

        assertThat(unknown("unmeasured: pressure-drop, example-device")
                        .get("what")
                        .asText())
                .isEqualTo("Pressure drop: no result of ours");
        assertThat(unknown("unmeasured: pressure-drop, present-device").has("plan"))
                .isFalse();
    }

    @Test
    @DisplayName("an aim beyond a thousand is more than 1,000, in numbers and in words")
    void moreThanAThousand() throws IOException {
        edit(DOSSIER, "margin: 15 mmHg ", "margin: 12.2 mmHg ");
        planned("{sd: 8 mmHg, detect: [10 mmHg, 0.5 mmHg]}");

        var plan = unknown("open: example-bench/pressure-drop/example-device/4.0 L/min | example-bench");

        var aim = plan.get("plan").get("aims").get(1);
        assertThat(Built.all(aim.get("needed"))).allSatisfy(n -> {
            assertThat(n.get("kind").asText()).isEqualTo("more");
            assertThat(n.get("n").asInt()).isEqualTo(1000);
        });
        assertThat(aim.get("sentence").asText()).contains("more than 1,000\u00a0units");
    }

    @Test
    @DisplayName("without a margin and without a difference to be found there is no number, and that is said")
    void nothingToAimAt() throws IOException {
        edit(DOSSIER, "margin: 15 mmHg ", "margin: none ");
        edit(RUNS, "E-1,E,4.0,262,199,121,", "E-1,E,4.0,292,199,121,");

        var open = unknown("open: example-bench/pressure-drop/example-device/4.0 L/min | example-bench");

        assertThat(open.has("plan")).isFalse();
        assertThat(open.get("settles").toString()).contains("no number can be given");
    }

    @Test
    @DisplayName("what the dossier declares comes as it is written, and who could supply it may be left open")
    void declared() throws IOException {
        edit(
                DOSSIER,
                "unknowns: []  ",
                "unknowns:\n"
                        + "  - {what: How it ages, device: example-device, matters: Long runs are planned., settles: A run of ten days.}\n#");

        var declared = unknown("declared: 1");

        assertThat(declared.get("what").asText()).isEqualTo("How it ages");
        assertThat(declared.get("who").asText()).isEqualTo("Not named");
        assertThat(declared.get("settles").get(0).asText()).isEqualTo("A run of ten days.");
    }

    @Test
    @DisplayName("the command prints every number with its assumptions, and stops where a build would")
    void command() throws IOException {
        var run = CommandLineUse.run("plan", "evidence/dossiers/small-oxygenators.yaml");

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out())
                .contains(
                        "two-sided", "noncentral t", "SD: 2.4 mg/100 L as the dossier states", "10 degrees of freedom")
                .containsPattern(
                        "to find a difference of 2 mg/100 L with a power of 80 %\\R.*14 units\\R.*24 units\\R.*38 units")
                .containsPattern("to find a difference of 10 mg/dL with a power of 90 %\\R.*\\R.*49 cases")
                .contains("half-width 2.5 mg/100 L", "holds within the same hospitals only", "no number suffices")
                .contains("Harrowmere Perfusion", "plasma leakage");
        assertThat(run.out().lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(100));

        edit("sources/example-paper.yaml", "mean: 64.1 mmHg", "mean: 64.1");
        var stopped = CommandLineUse.run("plan", library.resolve(DOSSIER).toString());
        assertThat(stopped.code()).isEqualTo(2);
        assertThat(stopped.out()).isEmpty();
        assertThat(stopped.err()).contains("STOP unit-missing");
        assertThat(CommandLineUse.run(
                                "plan", library.resolve("dossiers/none.yaml").toString())
                        .code())
                .isEqualTo(2);
    }

    private void edit(String file, String from, String to) throws IOException {
        LibraryCopy.edit(library.resolve(file), from, to);
    }

    private void planned(String plan) throws IOException {
        var reason = "    reason: one step of the alarm setting\n";
        edit(DOSSIER, reason, "%s    plan: %s%n".formatted(reason, plan));
    }

    private JsonNode unknown(String id) {
        var all = Built.all(
                Built.of(library.resolve(DOSSIER).toString()).results().get("unknowns"));
        return all.stream()
                .filter(u -> u.get("id").asText().startsWith(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no unknown " + id + " among "
                        + all.stream().map(u -> u.get("id").asText()).toList()));
    }

    private static List<Double> numbers(JsonNode aim, String field) {
        return Built.all(aim.get("needed")).stream()
                .map(n -> n.get(field).asDouble())
                .toList();
    }
}
