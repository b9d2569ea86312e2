package comparand.diag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a finding must say, and the order in which findings are listed. */
class DiagnosticTest {

    private static final Span PLACE = new Span("a.yaml", 1, 1, 1);

    @Test
    void onlyAStopStops() {
        assertThat(Diagnostic.stop("a-code", PLACE, "m", "w", "f").stops()).isTrue();
        assertThat(Diagnostic.hold("a-code", PLACE, "m", "w", "f").stops()).isFalse();
        assertThat(Diagnostic.note("a-code", PLACE, "m", "w", "f").stops()).isFalse();
    }

    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(strings = {"", "Unit-Missing", "unit missing", "unit_missing", "-unit", "unit-", "E42", "4-eyes"})
    void aCodeIsWordsJoinedByHyphens(String code) {
        assertThatThrownBy(() -> Diagnostic.stop(code, PLACE, "m", "w", "f"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(strings = {"", "  ", "a sentence with a full stop."})
    void aMessageIsOneSentenceWithoutAFullStop(String message) {
        assertThatThrownBy(() -> Diagnostic.stop("a-code", PLACE, message, "w", "f"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aFindingSaysWhyItMattersAndWhatToDo() {
        assertThatThrownBy(() -> Diagnostic.note("a-code", PLACE, "m", " ", "f"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Diagnostic.note("a-code", PLACE, "m", "w", ""))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void weightComesBeforePlaceAndPlaceBeforeCode() {
        var listed = List.of(
                Diagnostic.stop("b-code", new Span("a.yaml", 2, 9, 1), "m", "w", "f"),
                Diagnostic.stop("a-code", new Span("a.yaml", 10, 1, 1), "m", "w", "f"),
                Diagnostic.stop("a-code", new Span("a.yaml", 10, 2, 1), "m", "w", "f"),
                Diagnostic.stop("b-code", new Span("a.yaml", 10, 2, 1), "m", "w", "f"),
                Diagnostic.stop("a-code", new Span("b.yaml", 1, 1, 1), "m", "w", "f"),
                Diagnostic.hold("a-code", new Span("a.yaml", 1, 1, 1), "m", "w", "f"),
                Diagnostic.note("a-code", new Span("a.yaml", 1, 1, 1), "first", "w", "f"),
                Diagnostic.note("a-code", new Span("a.yaml", 1, 1, 1), "second", "w", "f"));
        var shuffled = new ArrayList<>(listed);
        Collections.shuffle(shuffled, new Random(1));

        assertThat(shuffled.stream().sorted(Diagnostic.ORDER)).isEqualTo(listed);
    }

    @Property
    void theOrderIsTheSameFromBothSidesAndCarriesOn(
            @ForAll("findings") Diagnostic a, @ForAll("findings") Diagnostic b, @ForAll("findings") Diagnostic c) {
        var order = Diagnostic.ORDER;

        assertThat(Integer.signum(order.compare(a, b))).isEqualTo(-Integer.signum(order.compare(b, a)));
        if (order.compare(a, b) <= 0 && order.compare(b, c) <= 0) {
            assertThat(order.compare(a, c)).isNotPositive();
        }
    }

    @Property
    void theListIsTheSameWhateverTheOrderFindingsWereMadeIn(
            @ForAll("lists") List<Diagnostic> findings, @ForAll Random random) {
        var shuffled = new ArrayList<>(findings);
        Collections.shuffle(shuffled, random);

        assertThat(shuffled.stream().sorted(Diagnostic.ORDER).toList())
                .isEqualTo(findings.stream().sorted(Diagnostic.ORDER).toList());
    }

    @Provide
    Arbitrary<List<Diagnostic>> lists() {
        return findings().list().ofMaxSize(12);
    }

    @Provide
    Arbitrary<Diagnostic> findings() {
        var spans = Combinators.combine(
                        Arbitraries.of("a.yaml", "b.yaml"),
                        Arbitraries.integers().between(1, 12),
                        Arbitraries.integers().between(1, 3))
                .as((file, line, column) -> new Span(file, line, column, 1));
        return Combinators.combine(
                        Arbitraries.of(Severity.class),
                        Arbitraries.of("a-code", "b-code"),
                        spans,
                        Arbitraries.of("m", "n"))
                .as((severity, code, span, message) -> new Diagnostic(severity, code, span, message, "w", "f"));
    }

    @Test
    void aLongQuoteIsShortenedAndWhatStandsBetweenTwoQuotesIsNot() {
        var between = "stands between two quoted words and is longer than any quote may be, "
                .repeat(3)
                .strip();
        var found = Diagnostic.note("any-code", Span.startOf("a"), "`one` " + between + " `two`", "why", "fix");
        assertThat(found.message()).isEqualTo("`one` " + between + " `two`");

        var quoted = Diagnostic.note("any-code", Span.startOf("a"), "`" + "x".repeat(200) + "` is long", "why", "fix");
        assertThat(quoted.message()).isEqualTo("`" + "x".repeat(80) + "…` is long");
    }
}
