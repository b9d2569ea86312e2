package comparand.diag;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A finding as text: where it is, the line, a caret under the words, why, and what to do. */
class DiagnosticTextTest {

    @Test
    void aFindingIsOneBlockWithItsLineAndACaretUnderTheWords() {
        var text = DiagnosticText.render(
                List.of(stop(new Span("sources/a.yaml", 2, 7, 4))), file -> lines("source: a", "mean: 64.1"));

        assertThat(text).isEqualTo("""
                STOP unit-missing  sources/a.yaml:2:7
                  the number has no unit.
                  2 | mean: 64.1
                    |       ^^^^
                  why: it may mean anything
                  fix: write the unit

                1 finding: 1 STOP. Nothing was written.
                """);
    }

    @Test
    void theMarginIsAsWideAsTheNumberOfTheLine() {
        var lines = new String[1000];
        Arrays.fill(lines, "key: 1");
        assertThat(excerpt(block(new Span("a.yaml", 1000, 6, 1), lines)))
                .containsExactly("  1000 | key: 1", "       |      ^");
    }

    @Test
    void aTabTakesOneColumnLikeAnyOtherSign() {
        assertThat(excerpt(block(new Span("a.yaml", 1, 6, 3), "\tkey:\tbad")))
                .containsExactly("  1 |  key: bad", "    |      ^^^");
        assertThat(excerpt(block(new Span("a.yaml", 1, 7, 3), "\tkey:\tbad")))
                .containsExactly("  1 |  key: bad", "    |       ^^^");
    }

    @Test
    void signsThatSteerATerminalAreShownAsADot() {
        assertThat(excerpt(block(new Span("a.yaml", 1, 6, 4), "key: \u001b[31m\u0007")))
                .containsExactly("  1 | key: ·[31m·", "    |      ^^^^");
    }

    @Test
    void aSignBeyondTheBasicPlaneIsOneColumn() {
        // a mathematical letter: two code units, one narrow sign
        assertThat(excerpt(block(new Span("a.yaml", 1, 5, 3), "\uD835\uDD38\uD835\uDD38: bad")))
                .containsExactly("  1 | \uD835\uDD38\uD835\uDD38: bad", "    |     ^^^");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {
                // a combining mark takes no room of its own, a wide sign takes two columns
                "Bla\u0308tter: bad, 11, 10",
                "e\u0301e\u0301e\u0301: bad, 9, 6",
                "圧力: bad, 5, 7",
                "🫀: bad, 4, 5"
            })
    void theCaretStandsUnderTheWordsAsTheTerminalShowsThem(String line, int column, int shownAt) {
        var caret = excerpt(block(new Span("a.yaml", 1, column, 3), line)).get(1);

        assertThat(caret).isEqualTo("    | " + " ".repeat(shownAt - 1) + "^^^");
    }

    @Test
    void underAWideSignTheCaretIsAsWide() {
        var caret = excerpt(block(new Span("a.yaml", 1, 6, 2), "key: 圧力")).get(1);

        assertThat(caret).isEqualTo("    |      ^^^^");
    }

    @Test
    void aLongLineIsCutAroundTheCaret() {
        var line = "a".repeat(500) + "BAD" + "b".repeat(500);

        var shown = excerpt(block(new Span("a.yaml", 1, 501, 3), line));

        assertThat(shown.get(0)).startsWith("  1 | …aaa").endsWith("bbb…").hasSizeLessThan(180);
        int at = shown.get(0).indexOf("BAD");
        assertThat(shown.get(1)).isEqualTo("    | " + " ".repeat(at - 6) + "^^^");
    }

    @Test
    void aLongLineWithTheFaultAtItsStartIsCutBehindOnly() {
        var shown = excerpt(block(new Span("a.yaml", 1, 1, 3), "BAD" + "b".repeat(500)));

        assertThat(shown.get(0)).startsWith("  1 | BADb").endsWith("b…");
        assertThat(shown.get(1)).isEqualTo("    | ^^^");
    }

    @Test
    void theCaretsEndWhereTheLineIsCut() {
        var shown = excerpt(block(new Span("a.yaml", 1, 1, 5000), "b".repeat(5000)));

        assertThat(shown.get(1).stripTrailing().length())
                .isLessThanOrEqualTo(shown.get(0).length());
    }

    @ParameterizedTest(name = "column {0}")
    @ValueSource(ints = {5, 6, 100, 5000})
    void aColumnAtOrPastTheEndStillGivesALineAndOneCaret(int column) {
        var shown = excerpt(block(new Span("a.yaml", 1, column, 1), "key:"));

        assertThat(shown).hasSize(2);
        assertThat(shown.get(0)).isEqualTo("  1 | key:");
        assertThat(shown.get(1)).containsOnlyOnce("^");
    }

    @Test
    void aLineThatIsNotThereIsLeftOut() {
        assertThat(excerpt(block(new Span("a.yaml", 3, 1, 1), "one", "two"))).isEmpty();
    }

    @Test
    void aBlankLineIsLeftOut() {
        assertThat(excerpt(block(new Span("a.yaml", 1, 1, 1), "   "))).isEmpty();
    }

    @Test
    void aFileThatCannotBeShownLeavesTheFindingWhole() {
        var text = DiagnosticText.render(List.of(stop(new Span("scan.pdf", 1, 1, 1))), file -> Optional.empty());

        assertThat(text.lines())
                .containsExactly(
                        "STOP unit-missing  scan.pdf:1:1",
                        "  the number has no unit.",
                        "  why: it may mean anything",
                        "  fix: write the unit",
                        "",
                        "1 finding: 1 STOP. Nothing was written.");
    }

    @Test
    void findingsAreListedInTheirOrderWhateverTheOrderGiven() {
        var note = Diagnostic.note("a-note", Span.startOf("a"), "m", "w", "f");
        var hold = Diagnostic.hold("a-hold", Span.startOf("a"), "m", "w", "f");
        var stop = Diagnostic.stop("a-stop", Span.startOf("z"), "m", "w", "f");

        var text = DiagnosticText.render(List.of(note, stop, hold), file -> Optional.empty());

        assertThat(text).containsSubsequence("STOP a-stop", "HOLD a-hold", "NOTE a-note");
        assertThat(text.strip()).endsWith("3 findings: 1 STOP, 1 HOLD, 1 NOTE. Nothing was written.");
    }

    @Test
    void theCountSaysWhetherAnythingWasWritten() {
        var hold = Diagnostic.hold("a-hold", Span.startOf("a"), "m", "w", "f");

        assertThat(DiagnosticText.count(List.of())).isEqualTo("No findings.");
        assertThat(DiagnosticText.count(List.of(hold))).isEqualTo("1 finding: 1 HOLD.");
        assertThat(DiagnosticText.count(List.of(hold, hold))).isEqualTo("2 findings: 2 HOLD.");
    }

    private static Diagnostic stop(Span span) {
        return Diagnostic.stop(
                "unit-missing", span, "the number has no unit", "it may mean anything", "write the unit");
    }

    private static String block(Span span, String... lines) {
        return DiagnosticText.render(List.of(stop(span)), file -> lines(lines));
    }

    private static Optional<List<String>> lines(String... lines) {
        return Optional.of(List.of(lines));
    }

    /** The source line and the line of carets. */
    private static List<String> excerpt(String text) {
        return text.lines().filter(l -> l.matches("  [ \\d]+ \\| .*")).toList();
    }
}
