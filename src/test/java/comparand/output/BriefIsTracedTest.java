package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.Built;
import comparand.support.NumberTokens;
import comparand.support.OutputTexts;
import comparand.support.TracedNumbers;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every number of the brief and of the letters stands in results.json. */
class BriefIsTracedTest {

    /** Counts the paper, and shows by example what a locator is: neither is evidence. */
    private static final String EXEMPT = "\\b\\d+ / \\d+\\b|4:T2r3: source 4, Table 2, row 3|(?m)^\\d+\\. ";

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("every number of the brief and the letters stands in results.json, or rounds from one there")
    void everyNumber(Built built) {
        var results = new TracedNumbers(List.of(built.results()));
        var texts = OutputTexts.of(built).entrySet().stream()
                .filter(e ->
                        e.getKey().equals("committee-brief.pdf") || e.getKey().startsWith("requests/"))
                .flatMap(e -> e.getValue().stream())
                .map(t -> t.replaceAll(EXEMPT, " "))
                .toList();

        assertThat(texts.stream().flatMap(t -> NumberTokens.of(t).stream())).hasSizeGreaterThan(100);
        assertThat(texts.stream()
                        .flatMap(t -> results.untraced(t).stream()
                                .filter(n -> !built.hasYear(n))
                                .map(n -> n + " in " + (t.length() > 200 ? t.substring(0, 200) : t)))
                        .distinct())
                .isEmpty();
        assertThat(results.untraced("72.41234 mmHg")).isNotEmpty();
    }
}
