package comparand.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import comparand.unit.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Circumstances: numbers or words, how a metric depends on them, and in which direction they distort. */
class ConditionTest {

    private final Condition humidity = Condition.number("room-humidity", "humidity of the room", "humidity", "%");
    private final Condition season = Condition.oneOf("season", "season", "season", "summer", "winter");

    @Test
    void aConditionIsANumberOrOneOfSomeWordsOrFreeWords() {
        assertThat(humidity.isNumber()).isTrue();
        assertThat(humidity.unit()).contains(Unit.of("%"));
        assertThat(humidity.words()).isEmpty();
        assertThat(season.isNumber()).isFalse();
        assertThat(season.words()).containsExactly("summer", "winter");
        assertThat(season.unit()).isEmpty();
        assertThat(Condition.words("place", "place", "place").isNumber()).isFalse();
        assertThat(Condition.words("place", "place", "place").words()).isEmpty();
    }

    @Test
    void aConditionHasNamesAndIsNotBothNumberAndWords() {
        assertThatThrownBy(() -> Condition.words(" ", "place", "place")).hasMessageContaining("an id, a name");
        assertThatThrownBy(() -> Condition.words("place", "", "place")).hasMessageContaining("an id, a name");
        assertThatThrownBy(() -> Condition.words("place", "place", "")).hasMessageContaining("a short name");
        assertThatThrownBy(() -> new Condition("x", "x", "x", Optional.of(Unit.ONE), List.of("cold")))
                .hasMessage("x is either a number or words");
    }

    @Test
    void wordsAreEqualOrNot() {
        assertThatThrownBy(() -> new ConditionUse(season, Role.DECIDES, Tolerance.within("1"), Influence.UNKNOWN))
                .hasMessage("season is named in words and can only be equal");
        assertThat(new ConditionUse(season, Role.DECIDES, Tolerance.EQUAL, Influence.UNKNOWN).tolerance())
                .isEqualTo(Tolerance.EQUAL);
        assertThat(new ConditionUse(humidity, Role.DECIDES, Tolerance.EQUAL, Influence.UNKNOWN).tolerance())
                .isEqualTo(Tolerance.EQUAL);
    }

    /** As a dossier may ask. */
    @Test
    void anotherToleranceChangesNothingElse() {
        var reason = Influence.more(Effect.RAISES, "more is more");
        var use = new ConditionUse(humidity, Role.QUALIFIES, Tolerance.EQUAL, reason);
        var wide = Tolerance.within("5 percentage points");

        assertThat(use.withTolerance(wide)).isEqualTo(new ConditionUse(humidity, Role.QUALIFIES, wide, reason));
    }

    @Test
    void anInfluenceIsByNumberOrByWordOrUnknown() {
        var number = Influence.more(Effect.LOWERS, "it thins");
        var word = Influence.instead(Map.of("winter", Effect.RAISES), "it is cold");

        assertThat(number.more()).isEqualTo(Effect.LOWERS);
        assertThat(number.instead()).isEmpty();
        assertThat(number.because()).isEqualTo("it thins");
        assertThat(word.more()).isEqualTo(Effect.NOT_PREDICTABLE);
        assertThat(word.instead()).containsExactly(Map.entry("winter", Effect.RAISES));
        assertThat(Influence.UNKNOWN.more()).isEqualTo(Effect.NOT_PREDICTABLE);
        assertThat(Influence.UNKNOWN.because()).isEmpty();
    }

    @Test
    void lessDoesTheOppositeOfMore() {
        assertThat(Effect.RAISES.reversed()).isEqualTo(Effect.LOWERS);
        assertThat(Effect.LOWERS.reversed()).isEqualTo(Effect.RAISES);
        assertThat(Effect.values())
                .allSatisfy(e -> assertThat(e.reversed().reversed()).isEqualTo(e));
        assertThat(Effect.NONE.reversed()).isEqualTo(Effect.NONE);
        assertThat(Effect.NOT_PREDICTABLE.reversed()).isEqualTo(Effect.NOT_PREDICTABLE);
    }

    @Test
    @DisplayName("the vocabulary is printed in one order: what was tested, flows and gas, the blood, bubbles, time")
    void theVocabulary() {
        assertThat(Conditions.ids())
                .containsSubsequence(
                        "test-model",
                        "species",
                        "blood-flow",
                        "oxygen-fraction",
                        "haemoglobin",
                        "temperature",
                        "bubble-detector",
                        "duration",
                        "phase")
                .containsExactlyElementsOf(Conditions.all().keySet())
                .doesNotHaveDuplicates();
        assertThat(Conditions.all()).allSatisfy((id, condition) -> {
            assertThat(condition.id()).isEqualTo(id).matches("[a-z0-9]+(-[a-z0-9]+)*");
            assertThat(condition.words()).doesNotHaveDuplicates();
        });
        assertThat(Conditions.all()).containsEntry("temperature", Conditions.TEMPERATURE);
    }

    @Test
    void boundsHoldTheirEndsAndNothingBeyond() {
        var bounds = new Bounds(-10, 500);

        assertThat(bounds.contain(-10)).isTrue();
        assertThat(bounds.contain(500)).isTrue();
        assertThat(bounds.contain(72.4)).isTrue();
        assertThat(bounds.contain(Math.nextDown(-10.0))).isFalse();
        assertThat(bounds.contain(Math.nextUp(500.0))).isFalse();
        assertThat(bounds.contain(Double.NaN)).isFalse();
        assertThat(Bounds.ANY.contain(-1e300)).isTrue();
        assertThat(Bounds.ANY.contain(1e300)).isTrue();
        assertThat(Bounds.ANY.contain(Double.NaN)).isFalse();
    }

    @Test
    void boundsRunUpwards() {
        assertThatThrownBy(() -> new Bounds(3, 3)).hasMessage("bounds run upwards, got 3.0 to 3.0");
        assertThatThrownBy(() -> new Bounds(3, 2)).hasMessageContaining("upwards");
        assertThatThrownBy(() -> new Bounds(Double.NaN, 2)).hasMessageContaining("upwards");
    }
}
