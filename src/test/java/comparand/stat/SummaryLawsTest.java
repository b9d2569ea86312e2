package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Conversions of printed summaries: what goes there comes back, and what cannot be converted is refused by reason. */
class SummaryLawsTest {

    private static final double PLAIN = 0;

    @Property
    void anIntervalMadeFromAStandardErrorGivesItBack(
            @ForAll @DoubleRange(min = 1, max = 100) double mean,
            @ForAll @DoubleRange(min = 0.01, max = 0.3) double relative,
            @ForAll @IntRange(min = 3, max = 300) int n) {
        var estimate = new MeanEstimate(mean, relative * mean, n >= 100 ? Double.POSITIVE_INFINITY : n - 1);
        var converted = IntervalConversion.of(mean, estimate.interval(0.95), n, 0.95, PLAIN)
                .orElseThrow();

        assertThat(converted.scale()).isEqualTo(IntervalConversion.Scale.PLAIN);
        assertThat(converted.se()).isCloseTo(estimate.se(), within(1e-6 * estimate.se()));
        assertThat(converted.moments().sd()).isCloseTo(estimate.se() * Math.sqrt(n), within(1e-5 * mean));
    }

    @Property
    void anIntervalOfAGeometricMeanIsFoundOnTheLogarithmicScale(
            @ForAll @DoubleRange(min = 0.1, max = 10) double mean,
            @ForAll @DoubleRange(min = 0.1, max = 0.4) double se,
            @ForAll @IntRange(min = 5, max = 80) int n) {
        var logs = new MeanEstimate(Math.log(mean), se, n - 1);
        var converted = IntervalConversion.of(mean, logs.interval(0.95).map(Math::exp), n, 0.95, PLAIN)
                .orElseThrow();

        assertThat(converted.scale()).isEqualTo(IntervalConversion.Scale.LOGARITHMIC);
        assertThat(converted.mean()).isCloseTo(Math.log(mean), within(1e-12));
        assertThat(converted.se()).isCloseTo(se, within(1e-6));
    }

    @Test
    void intervalsThatDoNotConvertAreRefusedByReason() {
        assertThat(IntervalConversion.of(5, new Interval(5, 5), 9, 0.95, 0).refusal())
                .contains(Refusal.NO_SPREAD);
        assertThat(IntervalConversion.of(5, new Interval(4.9, 5.1), 9, 0.95, 0.1)
                        .refusal())
                .contains(Refusal.ROUNDED_TOO_COARSELY);
        assertThat(IntervalConversion.of(9, new Interval(1, 10), 9, 0.95, 0).refusal())
                .contains(Refusal.LIMITS_NOT_CENTRED);
        assertThat(IntervalConversion.of(1, new Interval(-1, 10), 9, 0.95, 0).refusal())
                .contains(Refusal.LIMITS_NOT_CENTRED);
        assertThatThrownBy(() -> IntervalConversion.of(1, new Interval(0, 2), 9, 0.95, -1))
                .hasMessageContaining("not negative");
        assertThatThrownBy(() -> IntervalConversion.of(1, new Interval(0, 2), 1, 0.95, 0))
                .hasMessageContaining("at least 2");
    }

    @Test
    void limitsSaidToBeNormalAreReadSo() {
        var converted = IntervalConversion.ofNormal(10, new Interval(10 - 1.959964, 10 + 1.959964), 8, 0.95, 0.001)
                .orElseThrow();

        assertThat(converted.se()).isCloseTo(1, within(1e-6));
        // both limits: √2 · 0.001/√3 over a width of 3.92
        assertThat(converted.relativeRounding()).isCloseTo(Math.sqrt(2.0 / 3) * 0.001 / 3.919928, within(1e-12));
    }

    @Property
    void aTestStatisticAndItsPTellTheSameStandardError(
            @ForAll @DoubleRange(min = 0.5, max = 20) double difference,
            @ForAll @DoubleRange(min = 0.2, max = 10) double se,
            @ForAll @IntRange(min = 2, max = 40) int df) {
        var d = new MeanDifference(difference, se, df);

        assertThat(DifferenceConversion.seFromT(-difference, d.t()).orElseThrow())
                .isCloseTo(se, within(1e-9 * se));
        assertThat(DifferenceConversion.seFromF(difference, d.t() * d.t()).orElseThrow())
                .isCloseTo(se, within(1e-9 * se));
        if (d.p() > 1e-6) {
            assertThat(DifferenceConversion.seFromP(difference, d.p(), df).orElseThrow())
                    .isCloseTo(se, within(1e-4 * se));
            assertThat(DifferenceConversion.largestSeFromPBelow(difference, Math.min(0.999, 1.5 * d.p()), df)
                            .orElseThrow())
                    .isGreaterThan(se);
        }
    }

    @Test
    void whatTellsNoStandardErrorIsRefused() {
        assertThat(DifferenceConversion.seFromP(3, 1, 9).refusal()).contains(Refusal.NOT_CONVERTIBLE);
        assertThat(DifferenceConversion.seFromP(3, 0, 9).refusal()).contains(Refusal.NOT_CONVERTIBLE);
        assertThat(DifferenceConversion.seFromT(3, 0).refusal()).contains(Refusal.NOT_CONVERTIBLE);
        assertThat(DifferenceConversion.seFromT(0, 2).refusal()).contains(Refusal.NOT_CONVERTIBLE);
        assertThatThrownBy(() -> DifferenceConversion.seFromP(3, 1.1, 9)).hasMessageContaining("between 0 and 1");
        assertThatThrownBy(() -> DifferenceConversion.seFromF(3, -1)).hasMessageContaining("not negative");
        assertThatThrownBy(() -> DifferenceConversion.pooledSd(3, 0, 5)).hasMessageContaining("have cases");
        assertThatThrownBy(() -> DifferenceConversion.pooledSd(3, 5, 0)).hasMessageContaining("have cases");
    }

    @Property
    void spreadAndCorrelationOfPairsGiveEachOtherBack(
            @ForAll @DoubleRange(min = 0.1, max = 30) double sd1,
            @ForAll @DoubleRange(min = 0.1, max = 30) double sd2,
            @ForAll @DoubleRange(min = -1, max = 1) double r) {
        double sd = PairedSpread.sdOfDifference(sd1, sd2, r);

        assertThat(PairedSpread.correlation(sd1, sd2, sd)).isCloseTo(r, within(1e-9 * Math.max(sd1 / sd2, sd2 / sd1)));
        assertThat(sd).isBetween(Math.abs(sd1 - sd2) * (1 - 1e-12), (sd1 + sd2) * (1 + 1e-12));
        assertThatThrownBy(() -> PairedSpread.sdOfDifference(sd1, sd2, 1.01)).hasMessageContaining("between -1");
        assertThatThrownBy(() -> PairedSpread.correlation(0, sd2, sd)).hasMessageContaining("two spreads");
        assertThatThrownBy(() -> PairedSpread.correlation(sd1, 0, sd)).hasMessageContaining("two spreads");
    }

    @Property
    void subgroupsTogetherAreAsTheirValuesTogether(
            @ForAll @Size(min = 2, max = 9) List<@DoubleRange(min = -50, max = 50) Double> a,
            @ForAll @Size(min = 2, max = 9) List<@DoubleRange(min = -50, max = 50) Double> b,
            @ForAll @Size(min = 2, max = 9) List<@DoubleRange(min = -50, max = 50) Double> c,
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double offset) {
        var groups = List.of(moments(a, offset), moments(b, offset), moments(c, offset));
        var all = new ArrayList<>(a);
        all.addAll(b);
        all.addAll(c);
        var expected = moments(all, offset);

        var together = Subgroups.together(groups);

        assertThat(together.n()).isEqualTo(expected.n());
        assertThat(together.mean()).isCloseTo(expected.mean(), within(1e-8));
        assertThat(together.sd()).isCloseTo(expected.sd(), within(1e-7));
        assertThat(Subgroups.together(List.of(Subgroups.together(groups.subList(0, 2)), groups.get(2)))
                        .sd())
                .isCloseTo(expected.sd(), within(1e-7));
    }

    @Test
    void noSubgroupsHaveNoMoments() {
        assertThatThrownBy(() -> Subgroups.together(List.of())).hasMessageContaining("no groups");
    }

    @Property
    void lognormalMomentsComeBack(
            @ForAll @DoubleRange(min = 0.01, max = 100) double mean,
            @ForAll @DoubleRange(min = 0.01, max = 2) double relative,
            @ForAll @IntRange(min = 2, max = 90) int n) {
        var plain = new Moments(mean, relative * mean, n);
        var back = Lognormal.plain(Lognormal.logarithms(plain).orElseThrow());

        assertThat(back.mean()).isCloseTo(mean, within(1e-9 * mean));
        assertThat(back.sd()).isCloseTo(plain.sd(), within(1e-9 * mean));
        assertThat(back.n()).isEqualTo(n);
        assertThat(Lognormal.looksSkewed(plain)).isEqualTo(relative * mean * 2 > mean);
        assertThat(Lognormal.logarithms(new Moments(-mean, 1, n)).refusal()).contains(Refusal.NOT_POSITIVE);
        assertThat(Lognormal.logarithms(new Moments(0, 1, n)).refusal()).contains(Refusal.NOT_POSITIVE);
    }

    @Property
    void everySampleHasAPossibleSpread(
            @ForAll @Size(min = 2, max = 15) List<@DoubleRange(min = 0, max = 1) Double> values) {
        var m = moments(values, 0);
        double range = values.stream().mapToDouble(v -> v).max().orElseThrow()
                - values.stream().mapToDouble(v -> v).min().orElseThrow();
        var possible = SpreadPlausibility.fromRange(range, m.n());

        assertThat(m.sd()).isBetween(possible.low() * (1 - 1e-9) - 1e-12, possible.high() * (1 + 1e-9) + 1e-12);
        assertThat(m.sd())
                .isLessThanOrEqualTo(SpreadPlausibility.mostWithin(new Interval(0, 1), m.mean(), m.n()) + 1e-9);
    }

    @Test
    void theBoundsOfASpreadAreReached() {
        // half at either end; all in the middle but the extremes
        assertThat(Moments.of(0, 0, 8, 8).sd())
                .isCloseTo(SpreadPlausibility.fromRange(8, 4).high(), within(1e-12));
        assertThat(Moments.of(0, 0, 8, 8, 8).sd())
                .isCloseTo(SpreadPlausibility.fromRange(8, 5).high(), within(1e-12));
        assertThat(Moments.of(0, 4, 4, 4, 8).sd())
                .isCloseTo(SpreadPlausibility.fromRange(8, 5).low(), within(1e-12));
        assertThat(Moments.of(0, 0, 1, 1).sd())
                .isCloseTo(SpreadPlausibility.mostWithin(new Interval(0, 1), 0.5, 4), within(1e-12));

        var possible = SpreadPlausibility.fromRange(8, 5);
        assertThat(SpreadPlausibility.of(9, possible, 0.05)).isEqualTo(SpreadPlausibility.Finding.TOO_LARGE);
        assertThat(SpreadPlausibility.of(1, possible, 0.05)).isEqualTo(SpreadPlausibility.Finding.TOO_SMALL);
        assertThat(SpreadPlausibility.of(3, possible, 0.05)).isEqualTo(SpreadPlausibility.Finding.POSSIBLE);
        assertThat(SpreadPlausibility.of(possible.low() - 0.04, possible, 0.05))
                .isEqualTo(SpreadPlausibility.Finding.POSSIBLE);
        assertThat(SpreadPlausibility.of(possible.high() + 0.04, possible, 0.05))
                .isEqualTo(SpreadPlausibility.Finding.POSSIBLE);
        assertThat(SpreadPlausibility.of(possible.high(), possible, 0)).isEqualTo(SpreadPlausibility.Finding.POSSIBLE);
        assertThat(SpreadPlausibility.of(possible.low(), possible, 0)).isEqualTo(SpreadPlausibility.Finding.POSSIBLE);
        assertThatThrownBy(() -> SpreadPlausibility.mostWithin(new Interval(0, 1), 2, 4))
                .hasMessageContaining("within the bounds");
        assertThatThrownBy(() -> SpreadPlausibility.fromRange(3, 1)).hasMessageContaining("at least 2");
        assertThatThrownBy(() -> SpreadPlausibility.mostWithin(new Interval(0, 1), 0.5, 1))
                .hasMessageContaining("at least 2");
    }

    private static Moments moments(List<Double> values, double offset) {
        return Moments.of(values.stream().mapToDouble(v -> v + offset).toArray());
    }
}
