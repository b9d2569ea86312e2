/**
 * The data between the stages: the library as read, the comparands made of it, the pairs, and what can be said.
 *
 * <p>Records and sealed types only; no stage lives here. {@code comparand.model.library} holds the library as written.
 *
 * <p>Floor 3: imports floors 0 to 2.
 */
@NullMarked
package comparand.model;

import org.jspecify.annotations.NullMarked;
