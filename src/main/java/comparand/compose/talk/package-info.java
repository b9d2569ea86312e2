/** From comparisons to the slides of a talk: what is shown, what is said, what stands ready for questions. */
@NullMarked
package comparand.compose.talk;

import org.jspecify.annotations.NullMarked;
