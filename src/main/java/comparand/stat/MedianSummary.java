package comparand.stat;

import java.util.Optional;

/**
 * What is printed of a set of values instead of mean and SD: a median with extremes, with quartiles, or with both.
 *
 * <p>Means by Luo et al., Stat Methods Med Res 2018;27:1785-1805 (from memory); SDs by Wan et al., BMC Med Res Methodol
 * 2014;14:135, and with five numbers by Shi et al., Res Synth Methods 2020, doi 10.1002/jrsm.1429; the means of Wan et al.
 * are kept because papers use them. All assume a bell shape: see {@link MedianConversion} for the guard.
 */
public sealed interface MedianSummary permits MedianAndRange, MedianAndQuartiles, FiveNumbers {

    int n();

    /** The estimated mean, after Luo et al. */
    double mean();

    /** The estimated SD. */
    double sd();

    /** The estimated mean after Wan et al. */
    double meanAfterWan();

    /** The estimated SD after Wan et al. */
    double sdAfterWan();

    /** Whether the numbers are further from symmetric than values from a normal distribution would be. */
    boolean looksSkewed();

    /** The fewest values from which the numbers are converted; a convention. */
    int fewest();

    /** The same numbers as logarithms, which keep their order; nothing unless all are positive. */
    Optional<MedianSummary> logarithms();
}
