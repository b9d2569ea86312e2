/**
 * The catalogue: what each metric means, how it is computed, under which conditions two values of it may be compared.
 *
 * <p>A {@link comparand.metric.Metric} is data with one function; the metrics the tool ships are one file each, and a
 * metric a user declares in {@code evidence/metrics} becomes the same type. A metric enters the
 * {@link comparand.metric.Catalogue} with a citation and a worked value that a test recomputes, or not at all.
 *
 * <p>Floor 2: imports floors 0 and 1.
 */
@NullMarked
package comparand.metric;

import org.jspecify.annotations.NullMarked;
