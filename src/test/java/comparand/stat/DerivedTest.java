package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** A value, or the reason for none. */
class DerivedTest {

    private static final Derived<Integer> TWO = Derived.of(2);
    private static final Derived<Integer> NONE = Derived.refused(Refusal.SKEWED);

    @Test
    void aValueGoesOnAndARefusalStays() {
        assertThat(TWO.map(x -> x + 1)).isEqualTo(Derived.of(3));
        assertThat(NONE.map(x -> x + 1)).isEqualTo(Derived.refused(Refusal.SKEWED));
        assertThat(TWO.flatMap(x -> Derived.<Integer>refused(Refusal.NO_SPREAD)).refusal())
                .contains(Refusal.NO_SPREAD);
        assertThat(NONE.flatMap(x -> Derived.of(x + 1)).refusal()).contains(Refusal.SKEWED);
        assertThat(TWO.value()).contains(2);
        assertThat(TWO.refusal()).isEmpty();
        assertThat(NONE.value()).isEmpty();
    }

    @Test
    void whoInsistsOnAValueHearsTheReason() {
        assertThat(TWO.orElseThrow()).isEqualTo(2);
        assertThatThrownBy(NONE::orElseThrow)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("skewed");
    }

    @Test
    void everyReasonIsASentenceOfItsOwnWithoutAStop() {
        var words = Arrays.stream(Refusal.values()).map(Refusal::words).toList();

        assertThat(words)
                .doesNotHaveDuplicates()
                .allSatisfy(w -> assertThat(w).hasSizeGreaterThan(20).doesNotEndWith("."));
    }
}
