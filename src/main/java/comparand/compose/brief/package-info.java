/** The brief for a committee: two pages that say what can be decided, what cannot, and what it would take. */
@NullMarked
package comparand.compose.brief;

import org.jspecify.annotations.NullMarked;
