/**
 * Sets comparands side by side and says, condition by condition, whether like is set beside like.
 *
 * <p>Unknown is a third state: what one side does not report is never a match.
 *
 * <p>Floor 4: imports floors 0 to 3.
 */
@NullMarked
package comparand.match;

import org.jspecify.annotations.NullMarked;
