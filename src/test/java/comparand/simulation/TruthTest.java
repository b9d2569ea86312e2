package comparand.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import comparand.model.Verdict;
import comparand.simulation.Judged.Kind;
import comparand.simulation.Reading.Side;
import comparand.simulation.Reading.Why;
import comparand.simulation.Reading.Withheld;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which sentences a truth makes wrong, and how they are counted; the margin is 10. */
class TruthTest {

    @ParameterizedTest
    @CsvSource({
        // verdict, estimate, truth, direction wrong, within wrong, beyond wrong
        "HIGHER_BEYOND_MARGIN, 14, 0, true, false, true",
        "HIGHER_BEYOND_MARGIN, 14, 10, false, false, true",
        "HIGHER_BEYOND_MARGIN, 14, 20, false, false, false",
        "HIGHER_BEYOND_MARGIN, 14, -20, true, false, true",
        "LOWER_BEYOND_MARGIN, -14, -20, false, false, false",
        "LOWER_BEYOND_MARGIN, -14, -10, false, false, true",
        "HIGHER_MARGIN_OPEN, 8, 0, true, false, false",
        "HIGHER_MARGIN_OPEN, 8, 5, false, false, false",
        "LOWER_MARGIN_OPEN, -8, 5, true, false, false",
        "NONE_AS_LARGE_AS_MARGIN, 1, 0, false, false, false",
        "NONE_AS_LARGE_AS_MARGIN, 1, 5, false, false, false",
        "NONE_AS_LARGE_AS_MARGIN, 1, -10, false, true, false",
        "SMALLER_THAN_MARGIN, 4, 5, false, false, false",
        "SMALLER_THAN_MARGIN, 4, 0, true, false, false",
        "SMALLER_THAN_MARGIN, -4, 5, true, false, false",
        "SMALLER_THAN_MARGIN, 4, 20, false, true, false",
    })
    void aSentenceIsWrongOrNot(
            Verdict verdict, double estimate, double truth, boolean direction, boolean within, boolean beyond) {
        var said = Reading.of(verdict, estimate);
        var is = Truth.of(truth, 10);

        assertThat(is.wrongDirection(said)).isEqualTo(direction);
        assertThat(is.wrongWithin(said)).isEqualTo(within);
        assertThat(is.wrongBeyond(said)).isEqualTo(beyond);
        assertThat(is.wrong(said)).isEqualTo(direction || within || beyond);
    }

    @Test
    void whoSaysNothingIsNeverWrong() {
        assertThat(Reading.of(Verdict.NOT_SETTLED, 3)).isEqualTo(new Withheld(Why.NOT_SETTLED));
        assertThat(Truth.of(0, 10).wrong(new Withheld(Why.SHOWN))).isFalse();
    }

    @Test
    void aLimitIsMetByATrueMeanBelowIt() {
        assertThat(new Truth(0, 10, 3).wrong(new Side(true))).isFalse();
        assertThat(new Truth(0, 10, 3).wrong(new Side(false))).isTrue();
        assertThat(new Truth(0, 10, -3).wrong(new Side(true))).isTrue();
    }

    /** 1 of 2 and 0 of 1: a third, residuals 1/3 and -1/3, so SE = √(2/9)/3 = 15.7 %. */
    @Test
    void theErrorOfARateCountsLibraries() {
        var higher = Reading.of(Verdict.HIGHER_MARGIN_OPEN, 8);
        var pairs = new ArrayList<>(List.of(judged(1, higher), judged(1, new Withheld(Why.SHOWN))));
        pairs.add(judged(2, new Withheld(Why.SHOWN)));

        var rate = Reader.TOOL.wrong(pairs);

        assertThat(rate.hits()).isEqualTo(1);
        assertThat(rate.of()).isEqualTo(3);
        assertThat(rate.percent()).isCloseTo(100 / 3.0, within(1e-9));
        assertThat(rate.error()).isCloseTo(100 * Math.sqrt(2) / 9, within(1e-9));
        assertThat(Reader.TOOL.wrongOfAnswers(pairs).text()).isEqualTo("100.0 ± 0.0");
        assertThat(Reader.NAIVE.wrong(pairs).text()).isEqualTo("–");
    }

    private static Judged judged(int library, Reading tool) {
        var study = new LocalStudy(List.of(), 1, 0, false, OptionalDouble.empty(), true, List.of());
        return new Judged(
                library,
                Kind.PUBLISHED,
                study,
                Optional.empty(),
                Optional.empty(),
                Truth.of(0, 10),
                Optional.empty(),
                tool,
                Optional.empty(),
                Optional.empty());
    }
}
