/**
 * What the tool says to the author of a file.
 *
 * <p>A {@link comparand.diag.Diagnostic} is a value: made where the fault is seen, carried in a
 * {@code comparand.flow.Outcome}, printed once by the application. Nothing here throws for a fault in a
 * user's file, and nothing here prints.
 *
 * <p>A diagnostic asks the author of a file to act. What the reader of a document must know (a condition
 * that differs, an interval nobody published) is not a diagnostic: see {@code comparand.model.Standing} and
 * {@code comparand.model.Answer}.
 *
 * <p>Floor 0: imports the JDK only.
 */
@NullMarked
package comparand.diag;

import org.jspecify.annotations.NullMarked;
