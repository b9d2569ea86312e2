package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.Built;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The ladder from print to table, for every value an output lists. */
class TraceCommandTest {

    private static final String DEMO = "evidence/dossiers/small-oxygenators.yaml";
    private static final String BLANK = "templates/blank/dossiers/example.yaml";

    @TempDir
    Path folder;

    @TestFactory
    Stream<DynamicTest> everyValueOfTheDemoHasALadder() {
        return ladders(DEMO);
    }

    @TestFactory
    Stream<DynamicTest> everyValueOfTheBlankLibraryHasALadder() {
        return ladders(BLANK);
    }

    @Test
    void theDemoHasValuesOfEveryKind() {
        var results = Built.of(DEMO).results();
        var sides = Built.all(results.get("comparands")).stream().map(c -> text(c, "side"));
        var standings = Built.all(results.get("pairs")).stream().map(p -> text(p, "standing"));

        assertThat(sides).contains("local", "published");
        assertThat(standings).contains("same", "conditions-differ");
        assertThat(results.get("set-aside")).isNotEmpty();
        assertThat(results.get("unpaired")).isNotEmpty();
    }

    @TestFactory
    Stream<DynamicTest> aPairOfTheDemoStandsInTheLadderOfBothItsValues() {
        return Built.all(Built.of(DEMO).results().get("pairs")).stream()
                .map(p -> dynamicTest(text(p, "id"), () -> {
                    assertThat(ladder(DEMO, text(p, "ours")))
                            .contains("Set beside " + text(p, "theirs") + ":", text(p, "standing-words"));
                    assertThat(ladder(DEMO, text(p, "theirs")))
                            .contains("Set beside " + text(p, "ours") + ":", text(p, "standing-words"));
                }));
    }

    @TestFactory
    Stream<DynamicTest> aValueSetAsideSaysWhy() {
        return Built.all(Built.of(DEMO).results().get("set-aside")).stream()
                .map(a -> dynamicTest(
                        text(a, "value"),
                        () -> assertThat(ladder(DEMO, text(a, "value")))
                                .contains("Takes no part. " + text(a, "words"))
                                .doesNotContain("Set beside")));
    }

    @TestFactory
    Stream<DynamicTest> aValueThatStandsAloneSaysWhy() {
        return Built.all(Built.of(DEMO).results().get("unpaired")).stream()
                .map(u -> dynamicTest(
                        text(u, "comparand"),
                        () -> assertThat(ladder(DEMO, text(u, "comparand"))).contains(text(u, "why"))));
    }

    @Test
    void aValueThatIsHeldSaysWhy() throws IOException {
        var library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        LibraryCopy.edit(library.resolve("sources/example-paper.yaml"), "mean: 64.1 mmHg", "mean: -64.1 mmHg");

        assertThat(ladder(library.resolve("dossiers/example.yaml").toString(), "X1"))
                .contains("Takes no part. Held: `-64.1 mmHg` of pressure drop lies outside of what is possible");
    }

    @Test
    void aConvertedValueShowsWhatWasDoneToIt() {
        assertThat(ladder(BLANK, "E2"))
                .contains("210 mL (without filter)", "90 mL", "On our footing: 300 mL")
                .contains("  1. ", "  2. ");
    }

    @Test
    void aLocalValueNamesItsFileItsRowsAndItsFormula() {
        assertThat(ladder(BLANK, "example-bench/pressure-drop/present-device/4.0 L/min"))
                .contains("studies/example-bench/runs.csv", "4 rows", "ΔP = P_in - P_out", "n = 4 units");
    }

    @Test
    void aLocalValueNamesTheColumnsItWasComputedFromAndNoOthers() {
        assertThat(ladder(DEMO, "bench-norrisgate/pressure-drop/mirrowen-12/0.5 L/min"))
                .contains("p_in_mmhg", "p_out_mmhg")
                .doesNotContain("exhaust_co2_pct", "svo2_pct");
    }

    @ParameterizedTest(name = "{0} for {1}")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {
                "X2, E2",
                "x1, X1",
                "PP1, P1",
                "example-bench/pressure-drop/present-device/4 L/min, example-bench/pressure-drop/present-device/4.0 L/min"
            })
    void anUnknownIdIsWrongUsageAndTheNearestIsNamed(String typed, String meant) {
        var run = CommandLineUse.run("trace", BLANK, typed);

        assertThat(run.code()).isEqualTo(64);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("`" + typed + "`", "did you mean `" + meant + "`?");
    }

    @Test
    void anIdLikeNoOtherIsAnsweredWithAllThereAre() {
        var run = CommandLineUse.run("trace", BLANK, "something-else-entirely");

        assertThat(run.code()).isEqualTo(64);
        assertThat(run.err()).contains("E1", "E2", "P1", "X1", "example-bench/pressure-drop/example-device/4.0 L/min");
    }

    @Test
    void aLibraryWithFaultsIsNotTraced() throws IOException {
        var library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        LibraryCopy.edit(library.resolve("sources/example-paper.yaml"), "mean: 64.1 mmHg", "mean: 64.1");

        var run = CommandLineUse.run(
                "trace", library.resolve("dossiers/example.yaml").toString(), "X1");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("STOP unit-missing  sources/example-paper.yaml:20:11");
    }

    @Test
    void aDossierThatIsNotThereIsNamed() {
        var run = CommandLineUse.run("trace", "templates/blank/dossiers/nothing.yaml", "X1");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("STOP dossier-missing", "templates/blank/dossiers/nothing.yaml");
    }

    private static Stream<DynamicTest> ladders(String dossier) {
        return Built.all(Built.of(dossier).results().get("comparands")).stream()
                .map(c -> dynamicTest(text(c, "id"), () -> {
                    var ladder = ladder(dossier, text(c, "id"));
                    assertThat(ladder).startsWith(text(c, "id") + ": ");
                    assertThat(ladder).contains("locator " + text(c, "locator"), "  1. ", "On our footing: ");
                    int rung = 0;
                    for (var step : c.get("steps")) {
                        assertThat(ladder).contains("  " + ++rung + ". " + text(step, "text"));
                    }
                    assertThat(rung).isPositive();
                    for (var condition : c.get("conditions")) {
                        assertThat(ladder).contains(": " + text(condition, "is"));
                    }
                }));
    }

    private static String ladder(String dossier, String id) {
        var run = CommandLineUse.run("trace", dossier, id);
        assertThat(run.code()).as(run.err()).isZero();
        return run.out();
    }

    /** With plain spaces, as a terminal prints it. */
    private static String text(JsonNode node, String field) {
        return node.get(field).asText().replace('\u00a0', ' ');
    }
}
