/**
 * Figures of a run: what is drawn, with which marks and labels, and the same in words for who cannot see it.
 *
 * <p>Floor 4: imports floors 0 to 3, and words and results of composing.
 */
@NullMarked
package comparand.compose.figure;

import org.jspecify.annotations.NullMarked;
