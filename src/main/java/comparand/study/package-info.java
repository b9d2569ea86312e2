/**
 * From raw data files to local comparands: columns to inputs, inputs to metrics by their formulas, rows to units and
 * cases, units to means.
 *
 * <p>Every row is used, dropped by a recorded decision, or reported. One independent result per unit or case; repeats are
 * averaged first. Results do not depend on the order of rows or columns.
 *
 * <p>Floor 4: imports floors 0 to 3.
 */
@NullMarked
package comparand.study;

import org.jspecify.annotations.NullMarked;
