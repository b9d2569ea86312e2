/**
 * The draft of a manuscript: only sentences that are true of the run, numbers that can be found again, tables that stand
 * alone, references in the style of a journal, and a list of what its author still has to write.
 *
 * <p>Floor 4: imports floors 0 to 3 and the words, results, tables and figures of a run.
 */
@NullMarked
package comparand.compose.manuscript;

import org.jspecify.annotations.NullMarked;
