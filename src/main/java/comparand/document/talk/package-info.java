/**
 * A finished talk: slides, what is on them, and what is said to them.
 *
 * <p>Floor 0: imports the JDK only.
 */
@NullMarked
package comparand.document.talk;

import org.jspecify.annotations.NullMarked;
