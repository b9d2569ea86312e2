package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.Built;
import comparand.support.NumberTokens;
import comparand.support.SlidesRead.ReadSlide;
import comparand.support.TracedNumbers;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every number on slides and in their notes stands in results.json, word for word or rounded from a number there. */
class TalkIsTracedTest {

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    /** What counts slides and minutes, and not the evidence. */
    private static final String OF_THE_TALK =
            "\\(\\d+ of \\d+\\)$|→ slide \\d+$|^About [\\d mins]+ of 10 minutes$|‹#›|^\\d+ of \\d+ unknowns|^\\d+$";

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("every number of the talk is found in the results")
    void traced(Built built) {
        var from = new TracedNumbers(List.of(built.results()));
        var texts = texts(built).toList();

        assertThat(texts.stream().flatMap(t -> NumberTokens.of(t).stream())).hasSizeGreaterThan(300);
        assertThat(texts.stream().flatMap(t -> from.untraced(t).stream().map(n -> n + " in " + t)))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("a number that is changed in the headline is missed")
    void changed(Built built) {
        var from = new TracedNumbers(List.of(built.results()));
        var numbers = TalkTest.slides(built).stream()
                .filter(s -> s.title().startsWith("Firmest"))
                .flatMap(s -> s.under("NUMBERS").stream())
                .toList();

        assertThat(numbers)
                .isNotEmpty()
                .allSatisfy(line -> assertThat(from.untraced(
                                line.replaceAll("(\\d\\.\\d{3})\\d", "$17").replaceAll("(\\d\\.\\d\\d)\\d", "$19")))
                        .isNotEmpty());
    }

    private static Stream<String> texts(Built built) {
        return TalkTest.slides(built).stream()
                .flatMap(TalkIsTracedTest::lines)
                .map(t -> t.replaceAll(OF_THE_TALK, " "))
                .filter(t -> !t.isBlank());
    }

    private static Stream<String> lines(ReadSlide slide) {
        return Stream.of(slide.all().stream(), slide.notes().stream())
                .flatMap(s -> s)
                .flatMap(String::lines)
                .map(String::strip);
    }
}
