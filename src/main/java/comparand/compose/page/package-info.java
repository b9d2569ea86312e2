/**
 * The page for who asks the next question: the document it shows, and what can be tried on it.
 *
 * <p>Floor 4: imports floors 0 to 3 and the packages of {@code compose} that every document shares.
 */
@NullMarked
package comparand.compose.page;

import org.jspecify.annotations.NullMarked;
