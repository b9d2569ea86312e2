/**
 * From published values to comparands: unit, definition, form of the summary, reading between neighbours. Each conversion
 * is a recorded step, and refused where an input is missing.
 *
 * <p>Floor 4: imports floors 0 to 3.
 */
@NullMarked
package comparand.normalise;

import org.jspecify.annotations.NullMarked;
