package comparand.stat;

/**
 * What the likeness of samples within a case takes from their number: {@code DEFF = 1 + (m - 1) ICC}; Kish, Survey Sampling
 * 1965 (from memory).
 *
 * @param factor how many times larger the variance of a mean is than with independent samples
 */
public record DesignEffect(double factor) {

    /**
     * From the samples per case and their intraclass correlation.
     *
     * @param perCase at least 1; may be a mean number
     * @param icc at most 1
     */
    public static DesignEffect of(double perCase, double icc) {
        if (!(perCase >= 1) || !(icc <= 1)) {
            throw new IllegalArgumentException("not a cluster: %s per case, ICC %s".formatted(perCase, icc));
        }
        return new DesignEffect(1 + (perCase - 1) * icc);
    }

    /** How many independent samples the samples are worth. */
    public double effective(double samples) {
        return samples / factor;
    }

    /** {@code SE = SD √(DEFF/N)}: of the mean of N samples with an SD over samples. */
    public double se(double sdOverSamples, double samples) {
        return sdOverSamples * Math.sqrt(factor / samples);
    }
}
