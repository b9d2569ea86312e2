package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import comparand.metric.Catalogue;
import comparand.metric.Metric;
import comparand.metric.Nature;
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

/** What metrics mean, on the terminal. */
class CatalogueCommandTest {

    @TempDir
    Path folder;

    @Test
    void theListHoldsEveryMetricAndEveryConditionWithNameAndUnit() {
        var run = CommandLineUse.run("catalogue");
        var lines = run.out().lines().toList();

        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(Catalogue.shipped().all())
                .hasSizeGreaterThan(10)
                .allSatisfy(m -> assertThat(lines)
                        .anyMatch(l -> l.startsWith("  " + m.id() + " ")
                                && l.contains(" " + m.name() + " ")
                                && (m.unit().isNumber() ? l.endsWith(" 1") : l.endsWith(" " + m.unit()))));
        assertThat(Catalogue.shipped().conditions().values())
                .hasSizeGreaterThan(10)
                .allSatisfy(c -> assertThat(lines)
                        .anyMatch(l -> l.startsWith("  " + c.id() + " ") && l.contains(" " + c.name() + " ")));
    }

    @TestFactory
    Stream<DynamicTest> everyMetricIsPrintedInFull() {
        return Catalogue.shipped().all().stream()
                .map(m -> dynamicTest(m.id(), () -> {
                    var run = CommandLineUse.run("catalogue", m.id());

                    assertThat(run.code()).isZero();
                    assertThat(run.err()).isEmpty();
                    assertThat(run.out()).startsWith(m.id() + ": " + m.name() + " (" + m.symbol() + ")");
                    isWhole(m, run.out());
                }));
    }

    private static void isWhole(Metric m, String text) {
        assertThat(text).contains(m.meaning(), "plausible ", "possible ");
        m.derivations().forEach(d -> {
            assertThat(text).contains(d.formula(), d.citation().toString());
            d.inputs().forEach(i -> assertThat(text).contains(i.symbol(), i.meaning(), "(" + i.id() + ")"));
        });
        m.conditions()
                .forEach(u -> assertThat(text)
                        .contains(u.condition().id() + " ", u.tolerance().words()));
        m.definition().forEach(a -> assertThat(text).contains(a.words()));
        assertThat(m.citations()).isNotEmpty().allSatisfy(c -> assertThat(text).contains(c.toString()));
        m.worked().forEach(w -> assertThat(text).contains(w.result() + " from {"));
        if (m.nature() == Nature.MEASURED) {
            assertThat(m.derivations().isEmpty() || !m.worked().isEmpty())
                    .as("a formula comes with a worked value")
                    .isTrue();
        }
    }

    @Test
    void howRowsAreGatheredAndWhenAFormulaHoldsIsPrintedInWords() {
        assertThat(CommandLineUse.run("catalogue", "bubble-count-reduction").out())
                .contains(
                        "gives aggregation: pooled",
                        "rows: inputs summed over all rows of all units or cases, the formula applied once",
                        "rows: the median over units, runs or cases, each by inputs summed over the rows of each");
        assertThat(CommandLineUse.run("catalogue", "outlet-saturation").out())
                .contains("only when blood species is human", "under saturation-kind: kelman");
        assertThat(CommandLineUse.run("catalogue", "reference-blood-flow").out())
                .contains("rows: the lowest of: blood-flow at which oxygen-transfer-per-litre falls to 45, linear");
        assertThat(CommandLineUse.run("catalogue", "uptake-per-oxygen-fraction").out())
                .contains("rows: slope of oxygen-transfer on corrected-oxygen-fraction, least squares with intercept,"
                        + " through one point per unit or case");
        assertThat(CommandLineUse.run("catalogue", "pressure-drop").out()).doesNotContain("rows:", "only when");
    }

    @ParameterizedTest(name = "{0} for {1}")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {"presure-drop, pressure-drop", "Pressure-Drop, pressure-drop", "prime-volume, priming-volume"})
    void anUnknownMetricIsWrongUsageAndTheNearestIsNamed(String typed, String meant) {
        var run = CommandLineUse.run("catalogue", typed);

        assertThat(run.code()).isEqualTo(64);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("There is no metric `" + typed + "`", "did you mean `" + meant + "`?");
    }

    @Test
    void aMetricLikeNoOtherIsAnsweredWithTheLikeliestAndHowManyThereAre() {
        var run = CommandLineUse.run("catalogue", "birthday");

        assertThat(run.code()).isEqualTo(64);
        int all = Catalogue.shipped().ids().size();
        assertThat(run.err())
                .contains("known here: blood-viscosity, body-surface-area, bubble-count-downstream, ")
                .contains("and " + (all - 12) + " more");
    }

    @Test
    void theMetricsOfALibraryAreListedBesideThoseOfTheTool() {
        var list = CommandLineUse.run("catalogue", "--library", "templates/blank");
        var one = CommandLineUse.run("catalogue", "example-metric", "--library", "templates/blank");

        assertThat(list.out()).contains("  example-metric ", "  pressure-drop ", "  priming-flow ");
        assertThat(one.code()).isZero();
        assertThat(one.out())
                .startsWith("example-metric: time to free the device of air (t), min")
                .contains("priming-flow", "± 10 % of the value", "Local protocol, priming, step 4");
        assertThat(CommandLineUse.run("catalogue", "example-metric").code()).isEqualTo(64);
    }

    @Test
    void aLibraryThatIsNotThereIsNamed() {
        var missing = folder.resolve("nowhere").toString();

        var run = CommandLineUse.run("catalogue", "--library", missing);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("STOP library-missing", missing);
    }

    @Test
    void aFaultInAMetricOfTheLibraryIsNamedAtItsPlace() throws IOException {
        var library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        LibraryCopy.edit(library.resolve("metrics/example-metric.yaml"), "unit: min\n", "unit: minn\n");

        var run = CommandLineUse.run("catalogue", "--library", library.toString());

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("STOP value-unreadable  metrics/example-metric.yaml:7:7");
    }
}
