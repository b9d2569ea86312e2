package comparand.diag;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** "Did you mean": near enough to help, never far enough to mislead. */
class SuggestTest {

    private static final List<String> KNOWN =
            List.of("pressure-drop", "priming-volume", "temperature", "species", "pump", "n", "device");

    @ParameterizedTest(name = "{0} is one {2} away from {1}")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {
                "tempereture, temperature, change",
                "temperatur, temperature, omission",
                "temperaturee, temperature, addition",
                "tempertaure, temperature, swap",
                "DEVICE, device, way of writing"
            })
    void aSlipOfTheFingerIsUnderstood(String typed, String meant, String slip) {
        assertThat(Suggest.nearest(typed, KNOWN)).as(slip).contains(meant);
        assertThat(Suggest.distance(typed.toLowerCase(Locale.ROOT), meant)).isLessThanOrEqualTo(1);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {"birthday", "drop-pressure", "xyz", "volume"})
    void aWordFarFromAllGetsNoSuggestion(String typed) {
        assertThat(Suggest.nearest(typed, KNOWN)).isEmpty();
    }

    @Test
    void aShortWordMayDifferInOneLetter() {
        assertThat(Suggest.nearest("m", KNOWN)).contains("n");
        assertThat(Suggest.nearest("pmup", KNOWN)).contains("pump");
        assertThat(Suggest.nearest("pimp", KNOWN)).contains("pump");
        assertThat(Suggest.nearest("lamp", KNOWN)).isEmpty();
    }

    @Test
    void ofTwoEquallyNearTheFirstInTheAlphabetIsNamed() {
        assertThat(Suggest.nearest("cat", List.of("hat", "bat", "rat"))).contains("bat");
    }

    @Test
    void theInstructionNamesTheNearestOrListsAll() {
        assertThat(Suggest.instruction("presure-drop", KNOWN)).isEqualTo("did you mean `pressure-drop`?");
        assertThat(Suggest.instruction("birthday", List.of("b-word", "a-word")))
                .isEqualTo("known here: a-word, b-word");
    }

    @Test
    void theInstructionSaysSomethingWhereNothingIsKnown() {
        assertThat(Suggest.instruction("runs.csv", List.of()))
                .doesNotEndWith(": ")
                .isNotBlank();
    }

    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {"'', '', 0", "'', abc, 3", "abc, abc, 0", "kitten, sitting, 3", "ab, ba, 1", "ca, abc, 3"})
    void distancesOfTheLiterature(String a, String b, int edits) {
        assertThat(Suggest.distance(a, b)).isEqualTo(edits);
    }

    @Property
    void theDistanceIsTheSameBothWaysAndZeroForTheSameWordOnly(
            @ForAll @CharRange(from = 'a', to = 'd') @StringLength(max = 8) String a,
            @ForAll @CharRange(from = 'a', to = 'd') @StringLength(max = 8) String b) {
        int d = Suggest.distance(a, b);

        assertThat(Suggest.distance(b, a)).isEqualTo(d);
        assertThat(d == 0).isEqualTo(a.equals(b));
        assertThat(d).isBetween(Math.abs(a.length() - b.length()), Math.max(a.length(), b.length()));
    }

    @Property
    void aKnownWordIsNearestToItself(
            @ForAll @Size(min = 1, max = 8) List<@AlphaChars @StringLength(min = 1, max = 9) String> known) {
        for (var word : known) {
            assertThat(Suggest.nearest(word, known).orElseThrow()).isEqualToIgnoringCase(word);
        }
    }

    @Property
    void aSwapOfTwoNeighboursIsUnderstood(
            @ForAll @CharRange(from = 'a', to = 'z') @StringLength(min = 2, max = 20) String word,
            @ForAll @IntRange(min = 0, max = 18) int at) {
        int i = Math.min(at, word.length() - 2);
        var typed = word.substring(0, i) + word.charAt(i + 1) + word.charAt(i) + word.substring(i + 2);

        assertThat(Suggest.nearest(typed, List.of(word))).contains(word);
    }

    @Property
    void theSuggestionDoesNotDependOnTheOrderOfTheWords(
            @ForAll @AlphaChars @StringLength(max = 12) String typed, @ForAll Random random) {
        var shuffled = new ArrayList<>(KNOWN);
        Collections.shuffle(shuffled, random);

        assertThat(Suggest.instruction(typed, shuffled)).isEqualTo(Suggest.instruction(typed, KNOWN));
    }

    @Test
    void ofVeryManyNamesThoseThatBeginLikeTheWordComeFirstAndTheRestAreCounted() {
        var many = new ArrayList<>(KNOWN);
        for (int i = 0; i < 90; i++) {
            many.add("other-" + (char) ('a' + i / 26) + (char) ('a' + i % 26));
        }

        assertThat(Suggest.instruction("prime", many))
                .startsWith("known here: priming-volume, pressure-drop, ")
                .endsWith(" and 85 more");
        assertThat(Suggest.instruction("birthday", KNOWN)).contains(KNOWN).doesNotContain("more");
    }
}
