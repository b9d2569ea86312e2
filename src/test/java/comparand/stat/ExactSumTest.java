package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** The sum of doubles against the same sum in decimals, which is exact. */
class ExactSumTest {

    @Provide
    Arbitrary<List<Double>> values() {
        var wide = Arbitraries.doubles().between(-1e300, 1e300).map(x -> x / 64);
        var small = Arbitraries.doubles().between(-1, 1).map(x -> x * 1e-290);
        var plain = Arbitraries.doubles().between(-1000, 1000);
        return Arbitraries.oneOf(wide, small, plain).list().ofMaxSize(60);
    }

    @Property
    void theSumIsTheExactOneRoundedOnce(@ForAll("values") List<Double> values) {
        var exact = values.stream().map(BigDecimal::new).reduce(BigDecimal.ZERO, BigDecimal::add);

        assertThat(sum(values).sum()).isEqualTo(exact.doubleValue() + 0.0);
        assertThat(sum(values).count()).isEqualTo(values.size());
    }

    @Property
    void theOrderOfTheValuesDoesNotMatter(@ForAll("values") List<Double> values, @ForAll long seed) {
        var shuffled = new ArrayList<>(values);
        Collections.shuffle(shuffled, new Random(seed));

        assertThat(sum(shuffled).sum()).isEqualTo(sum(values).sum());
    }

    @Property
    void theSumOfTwoHalvesIsTheSumOfAll(@ForAll("values") List<Double> values) {
        var first = sum(values.subList(0, values.size() / 2));
        first.accept(sum(values.subList(values.size() / 2, values.size())));

        assertThat(first.sum()).isEqualTo(sum(values).sum());
        assertThat(first.count()).isEqualTo(values.size());
    }

    @Test
    void halfAUnitIsRoundedToEvenUnlessSomethingSmallerDecides() {
        // 2⁵³ + 1 lies halfway between two doubles; a crumb decides
        double big = 0x1p53;
        assertThat(sum(List.of(big, 1.0)).sum()).isEqualTo(big);
        assertThat(sum(List.of(big, 1.0, 0x1p-60)).sum()).isEqualTo(big + 2);
        assertThat(sum(List.of(big, 1.0, -0x1p-60)).sum()).isEqualTo(big);
        assertThat(sum(List.of(-big, -1.0, -0x1p-60)).sum()).isEqualTo(-big - 2);
        assertThat(sum(List.of(big + 2, 1.0)).sum()).isEqualTo(big + 4);
        assertThat(sum(List.of(big + 2, 1.0, -0x1p-60)).sum()).isEqualTo(big + 2);
    }

    @Test
    void aMillionTenthsMakeAHundredThousandOfWhatATenthIs() {
        var sum = new ExactSum();
        for (int i = 0; i < 1_000_000; i++) {
            sum.accept(0.1);
        }

        assertThat(sum.sum())
                .isEqualTo(new BigDecimal("0.1000000000000000055511151231257827021181583404541015625")
                        .multiply(BigDecimal.valueOf(1_000_000))
                        .doubleValue());
        assertThat(sum.mean()).isEqualTo(0.1);
    }

    @Test
    void noValuesHaveTheSumZeroAndNoMean() {
        assertThat(new ExactSum().sum()).isZero();
        assertThatThrownBy(() -> new ExactSum().mean()).hasMessageContaining("no values");
    }

    @Test
    void whatIsNotANumberIsRefused() {
        var sum = new ExactSum();

        assertThatThrownBy(() -> sum.accept(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> sum.accept(Double.POSITIVE_INFINITY)).isInstanceOf(IllegalArgumentException.class);
        sum.accept(Double.MAX_VALUE);
        assertThatThrownBy(() -> sum.accept(Double.MAX_VALUE)).isInstanceOf(ArithmeticException.class);
    }

    private static ExactSum sum(List<Double> values) {
        var sum = new ExactSum();
        values.forEach(sum::accept);
        return sum;
    }
}
