/**
 * Statistics over plain numbers: pure functions, each naming its method and paper.
 *
 * <p>Nothing here knows units, devices or documents. Levels are fractions ({@code 0.95}); tests are two-sided.
 *
 * <ul>
 *   <li>Printed summaries to means and SDs: {@link comparand.stat.SpreadConversion}, {@link
 *       comparand.stat.IntervalConversion}, {@link comparand.stat.DifferenceConversion}, {@link
 *       comparand.stat.MedianConversion}, {@link comparand.stat.PairedSpread}, {@link comparand.stat.Subgroups}, {@link
 *       comparand.stat.Lognormal}, {@link comparand.stat.SpreadPlausibility}.
 *   <li>Local values: {@link comparand.stat.LocalMean} (one entry for any number of centres), {@link
 *       comparand.stat.PairedReduction}, {@link comparand.stat.BcaBootstrap}, {@link comparand.stat.StraightLine} and the
 *       other fits, {@link comparand.stat.ExactSum} for streams.
 *   <li>Comparison: {@link comparand.stat.MeanDifference}, {@link comparand.stat.RatioOfMeans}, {@link
 *       comparand.stat.HedgesG}, {@link comparand.stat.TwoOneSided}, {@link comparand.stat.ToleranceFactor}, {@link
 *       comparand.stat.Propagation}.
 *   <li>Pooling: {@link comparand.stat.Pool} (one entry for any number of sources).
 *   <li>Planning: {@link comparand.stat.PrecisionPlan}, {@link comparand.stat.CentrePlan}, {@link
 *       comparand.stat.PowerPlan}, {@link comparand.stat.EquivalencePlan}; {@link comparand.stat.ComparedGroups} says for
 *       which groups.
 * </ul>
 *
 * <p>Where the numbers at hand allow no answer the result is a {@link comparand.stat.Derived} with its reason. Functions
 * throw {@link java.lang.IllegalArgumentException} where the method is not defined for any numbers of the kind: the caller
 * has let something through. Papers marked "from memory" were not at hand; the numbers are held to checks of their own.
 *
 * <p>Floor 0: imports the JDK and the statistics libraries.
 */
@NullMarked
package comparand.stat;

import org.jspecify.annotations.NullMarked;
