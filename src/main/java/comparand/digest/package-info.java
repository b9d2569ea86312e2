/**
 * What tells contents apart, in the same words everywhere.
 *
 * <p>Floor 0: imports nothing of the others.
 */
@NullMarked
package comparand.digest;

import org.jspecify.annotations.NullMarked;
