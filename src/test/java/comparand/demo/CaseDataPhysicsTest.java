package comparand.demo;

import static java.util.stream.Collectors.averagingDouble;
import static java.util.stream.Collectors.groupingBy;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The invented cases look like cases: what is computed from the committed files lies where it lies in children of 3 to 12 kg
 * on bypass. The ranges are common practice, from memory; that saturation follows oxygen pressure is Severinghaus 1979.
 */
class CaseDataPhysicsTest {

    private static final CaseDataRead FILES = new CaseDataRead(CaseData.FOLDER);

    private final Map<String, CaseDataReadCase> cases =
            CaseDataReadCase.all(FILES).stream().distinct().collect(Collectors.toMap(CaseDataReadCase::id, c -> c));
    private final List<CaseDataReadCase> counted = CaseDataReadCase.counted(FILES);
    private final List<CaseDataReadSample> samples = CaseDataReadSample.all(FILES);

    @Test
    void patientsAreOfThreeToTwelveKilograms() {
        assertThat(counted).allSatisfy(c -> {
            assertThat(c.weight()).isBetween(3.0, 12.0);
            assertThat(c.surface()).isBetween(0.19, 0.55);
            assertThat(c.fullFlow() / c.surface()).isBetween(2.4, 3.25);
            assertThat(c.fullFlow()).isBetween(0.45, 1.5);
            assertThat(c.lowest()).isBetween(28.0, 35.0);
            assertThat(c.pressureDrop()).isBetween(12.0, 110.0);
            assertThat(c.plateletsBefore()).isBetween(180.0, 420.0);
            assertThat(c.plateletsAfter()).isBetween(80.0, 220.0);
            assertThat(c.correctedPlateletChange()).isBetween(-80.0, 20.0);
            assertThat(c.haematocritBefore()).isBetween(0.27, 0.55);
            assertThat(c.haematocritAfter()).isBetween(0.25, 0.35).isLessThan(c.haematocritBefore());
        });
        assertThat(counted)
                .filteredOn(c -> !Double.isNaN(c.freeHaemoglobin()))
                .allSatisfy(c -> assertThat(c.freeHaemoglobin()).isBetween(5.0, 60.0));
    }

    @Test
    void everyCaseHasTwoToEightSamplesAndNotAllTheSameNumber() {
        var perCase = samples.stream().collect(groupingBy(CaseDataReadSample::id, Collectors.counting()));

        assertThat(perCase.keySet()).isEqualTo(cases.keySet());
        assertThat(perCase.values())
                .allSatisfy(n -> assertThat(n).isBetween(2L, 8L))
                .contains(2L, 8L);
        assertThat(samples.stream().map(s -> s.id() + " " + s.minute())).doesNotHaveDuplicates();
    }

    @Test
    void samplesBelongToTheirCase() {
        assertThat(samples).allSatisfy(s -> {
            var subject = Objects.requireNonNull(cases.get(s.id()));
            assertThat(s.minute()).isPositive().isLessThan(subject.bypass());
            assertThat(s.flow()).isLessThanOrEqualTo(subject.fullFlow());
            assertThat(s.haemoglobin() / 33.3).isCloseTo(subject.haematocritAfter(), within(0.04));
            assertThat(s.bloodIn()).isBetween(subject.lowest() - 1, 37.5);
            assertThat(s.flow() / subject.surface()).isBetween(2.0, 3.5);
        });
    }

    @Test
    void bloodGasesAreThoseOfBypass() {
        assertThat(samples).allSatisfy(s -> {
            assertThat(s.haemoglobin()).isBetween(8.0, 12.0);
            assertThat(s.arterial().po2()).isBetween(100.0, 300.0);
            assertThat(s.arterial().pco2())
                    .isBetween(32.0, 50.0)
                    .isLessThan(s.venous().pco2());
            assertThat(s.arterial().ph()).isBetween(7.30, 7.50);
            assertThat(s.arterial().saturation()).isBetween(0.97, 1.0);
            assertThat(s.venous().saturation()).isBetween(0.60, 0.88);
            assertThat(s.venous().po2()).isBetween(28.0, 60.0);
            assertThat(s.baseExcess()).isBetween(-8.0, 8.0);
            assertThat(s.oxygenFraction()).isBetween(0.21, 1.0);
            assertThat(s.sweep() / s.flow()).isBetween(0.3, 1.3);
            assertThat(s.barometer()).isBetween(700.0, 780.0);
        });
        assertThat(median(CaseDataReadSample::oxygenFraction)).isBetween(0.40, 0.75);
    }

    @Test
    @DisplayName("saturations are those of the oxygen pressures, to 0.02")
    void saturationsFollowPressures() {
        assertThat(samples).allSatisfy(s -> {
            for (var side : List.of(s.arterial(), s.venous())) {
                assertThat(side.saturation()).isCloseTo(CaseDataBlood.saturation(side.po2(), side.ph()), within(0.02));
            }
        });
    }

    @Test
    void whatIsExchangedIsWhatChildrenUse() {
        assertThat(samples).allSatisfy(s -> {
            var subject = Objects.requireNonNull(cases.get(s.id()));
            assertThat(s.uptake()).isBetween(8.0, 90.0);
            assertThat(s.uptake() / subject.surface()).isBetween(45.0, 165.0);
            assertThat(s.exchangeRatio()).isBetween(0.6, 1.3);
            assertThat(s.shunt()).isBetween(0.0, 0.35);
            assertThat(s.pressureDrop()).isBetween(12.0, 120.0);
        });
        assertThat(samples)
                .filteredOn(s -> s.bloodIn() >= 35.5)
                .hasSizeGreaterThan(20)
                .allSatisfy(s -> assertThat(s.uptake()
                                / Objects.requireNonNull(cases.get(s.id())).surface())
                        .isBetween(85.0, 165.0));
        assertThat(median(CaseDataReadSample::exchangeRatio)).isCloseTo(0.85, within(0.05));
        assertThat(median(CaseDataReadSample::shunt)).isBetween(0.10, 0.20);
    }

    @Test
    void theExchangerWarmsTowardsTheWater() {
        var apart = samples.stream()
                .filter(s -> Math.abs(s.waterIn() - s.bloodIn()) >= 3)
                .toList();

        assertThat(apart)
                .hasSizeGreaterThan(100)
                .allSatisfy(s -> assertThat((s.bloodOut() - s.bloodIn()) / (s.waterIn() - s.bloodIn()))
                        .isBetween(0.50, 0.90));
    }

    /** One-way analysis of variance, groups of unequal size: share of the variance that lies between cases. */
    @ParameterizedTest
    @CsvSource({"Q", "M", "S"})
    @DisplayName("samples of one case are alike: intraclass correlation of oxygen transfer 0.5 to 0.7")
    void correlationWithinCases(String device) {
        var byCase = samplesOf(device).stream()
                .collect(groupingBy(
                        CaseDataReadSample::id, Collectors.mapping(CaseDataReadSample::uptake, Collectors.toList())));
        double n = byCase.values().stream().mapToInt(List::size).sum();
        double k = byCase.size();
        double mean = byCase.values().stream()
                        .flatMap(List::stream)
                        .mapToDouble(x -> x)
                        .sum()
                / n;
        double between = 0;
        double inside = 0;
        double squares = 0;
        for (var values : byCase.values()) {
            double own = values.stream().mapToDouble(x -> x).average().orElseThrow();
            between += values.size() * (own - mean) * (own - mean) / (k - 1);
            inside += values.stream().mapToDouble(x -> (x - own) * (x - own)).sum() / (n - k);
            squares += values.size() * values.size();
        }
        double size = (n - squares / n) / (k - 1);

        assertThat((between - inside) / (between + (size - 1) * inside)).isBetween(0.5, 0.7);
    }

    @ParameterizedTest
    @CsvSource({"Q, 25", "M, 17", "S, 12"})
    @DisplayName(
            "more uptake needs a higher oxygen fraction: at least 12 cases, a span of 0.15, a slope clear of nought")
    void oxygenFractionRisesWithUptake(String device, int expected) {
        var fractions = perCase(device, CaseDataReadSample::oxygenFraction);
        var uptakes = perCase(device, CaseDataReadSample::uptake);
        var line = new SimpleRegression();
        fractions.forEach((id, x) -> line.addData(x, Objects.requireNonNull(uptakes.get(id))));

        assertThat(fractions).hasSize(expected);
        assertThat(fractions.values().stream().mapToDouble(x -> x).max().orElseThrow()
                        - fractions.values().stream().mapToDouble(x -> x).min().orElseThrow())
                .isGreaterThanOrEqualTo(0.15);
        assertThat(line.getSlope()).isBetween(40.0, 700.0);
        assertThat(line.getSignificance()).isLessThan(0.001);
    }

    private List<CaseDataReadSample> samplesOf(String device) {
        var ids = counted.stream()
                .filter(c -> c.device().equals(device))
                .map(CaseDataReadCase::id)
                .collect(Collectors.toSet());
        return samples.stream().filter(s -> ids.contains(s.id())).toList();
    }

    private Map<String, Double> perCase(String device, ToDoubleFunction<CaseDataReadSample> value) {
        return samplesOf(device).stream().collect(groupingBy(CaseDataReadSample::id, averagingDouble(value)));
    }

    private double median(ToDoubleFunction<CaseDataReadSample> value) {
        return new Median().evaluate(samples.stream().mapToDouble(value).toArray());
    }
}
