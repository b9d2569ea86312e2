package comparand.stat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Several samples per case reduced to one value per case, their mean: ten samples of one patient are not ten patients, and
 * cases weigh equally.
 *
 * @param means of each case, in the order given
 * @param samples of all cases
 * @param unequal whether the numbers of samples differ more than fourfold between cases, so that weighing is worth a look
 * @param oneStage all samples fitted at once, with cases as random centres, where that is worth a look and can be done
 */
public record CaseMeans(List<Double> means, int samples, boolean unequal, Optional<RandomCentres> oneStage) {

    /** From this ratio of sample numbers on, the one-stage fit is made; a convention. */
    private static final double UNEQUAL = 4;

    /** The two means differ by more than this share of a standard error; a convention. */
    private static final double DIFFER = 0.25;

    public CaseMeans {
        means = List.copyOf(means);
    }

    /**
     * From the samples of each case.
     *
     * @throws IllegalArgumentException for no cases, or one without samples
     */
    public static CaseMeans of(List<double[]> cases) {
        if (cases.isEmpty() || cases.stream().anyMatch(c -> c.length == 0)) {
            throw new IllegalArgumentException("every case has at least one sample");
        }
        int most = cases.stream().mapToInt(c -> c.length).max().orElseThrow();
        int least = cases.stream().mapToInt(c -> c.length).min().orElseThrow();
        boolean unequal = most > UNEQUAL * least;
        boolean spread =
                cases.stream().anyMatch(c -> Arrays.stream(c).distinct().count() > 1);
        return new CaseMeans(
                cases.stream().map(CaseMeans::mean).toList(),
                cases.stream().mapToInt(c -> c.length).sum(),
                unequal,
                unequal && spread && cases.size() > 1 ? Optional.of(RandomCentres.of(cases)) : Optional.empty());
    }

    /** Mean, standard error and degrees of freedom over cases; refused for one case. */
    public Derived<MeanEstimate> estimate() {
        return means.size() < 2
                ? Derived.refused(Refusal.TOO_FEW_VALUES)
                : Derived.of(
                        Moments.of(means.stream().mapToDouble(m -> m).toArray()).estimate());
    }

    /** Whether the one-stage mean lies more than a quarter of a standard error off: to be reported beside the mean. */
    public boolean weighingMatters() {
        return estimate()
                .value()
                .flatMap(e -> oneStage.map(o -> Math.abs(o.mean() - e.mean()) > DIFFER * e.se()))
                .orElse(false);
    }

    private static double mean(double... samples) {
        var sum = new ExactSum();
        Arrays.stream(samples).forEach(sum);
        return sum.mean();
    }
}
