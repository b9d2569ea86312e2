/**
 * From pairs to answers: the interval of a difference against the margin set beforehand.
 *
 * <p>Then what several sources say together ({@link comparand.compare.Pooling}), what changes under a scenario ({@link
 * comparand.compare.Scenarios}), and what stays open ({@link comparand.compare.Unknowns}).
 *
 * <p>Only pairs whose standing allows it are compared; a figure published without spread is never tested as if it had
 * one.
 *
 * <p>Floor 4: imports floors 0 to 3.
 */
@NullMarked
package comparand.compare;

import org.jspecify.annotations.NullMarked;
