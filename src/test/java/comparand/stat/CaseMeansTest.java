package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** One value per case. */
class CaseMeansTest {

    @Test
    void casesWeighEquallyWhateverTheirNumberOfSamples() {
        var cases = CaseMeans.of(List.of(new double[] {1, 3}, new double[] {10}, new double[] {4, 5, 6, 5}));

        assertThat(cases.means()).containsExactly(2.0, 10.0, 5.0);
        assertThat(cases.samples()).isEqualTo(7);
        assertThat(cases.unequal()).isFalse();
        assertThat(cases.oneStage()).isEmpty();
        assertThat(cases.weighingMatters()).isFalse();
        assertThat(cases.estimate().orElseThrow())
                .isEqualTo(Moments.of(2, 10, 5).estimate());
    }

    @Test
    void veryUnequalNumbersOfSamplesAreFittedAtOnceAsWell() {
        // case means 5, 5.1 and 9, the last with one sample only: with little spread between cases it counts for less
        var matters = CaseMeans.of(
                List.of(new double[] {1, 9, 2, 8, 5}, new double[] {1.1, 9.1, 2.1, 8.1, 5.1}, new double[] {9}));
        var agree = CaseMeans.of(
                List.of(new double[] {4.9, 5.1, 5, 5, 5}, new double[] {7, 7.1, 6.9, 7, 7}, new double[] {9}));

        assertThat(matters.unequal()).isTrue();
        assertThat(matters.oneStage().orElseThrow().mean())
                .isLessThan(Moments.of(5, 5.1, 9).mean());
        assertThat(matters.weighingMatters()).isTrue();
        assertThat(agree.oneStage().orElseThrow().mean()).isCloseTo(7, within(0.05));
        assertThat(agree.weighingMatters()).isFalse();
    }

    @Test
    void whatCannotBeFittedIsLeftOut() {
        var single = CaseMeans.of(List.of(new double[] {1, 2, 3}));
        var flat = CaseMeans.of(List.of(new double[] {1, 1, 1, 1, 1}, new double[] {2}));

        assertThat(single.estimate().refusal()).contains(Refusal.TOO_FEW_VALUES);
        assertThat(single.weighingMatters()).isFalse();
        assertThat(flat.unequal()).isTrue();
        assertThat(flat.oneStage()).isEmpty();
        assertThatThrownBy(() -> CaseMeans.of(List.of())).hasMessageContaining("at least one sample");
        assertThatThrownBy(() -> CaseMeans.of(List.of(new double[0]))).hasMessageContaining("at least one sample");
    }
}
