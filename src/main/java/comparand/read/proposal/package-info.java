/**
 * Proposes the mapping of raw files that nobody has described yet. Nothing here is ever used to read data: a proposal is a text
 * in which every assumption stands as a comment, for a person to check.
 *
 * <p>Floor 4: imports floors 0 to 3, and the readers of single files.
 */
@NullMarked
package comparand.read.proposal;

import org.jspecify.annotations.NullMarked;
