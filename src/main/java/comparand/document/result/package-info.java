/**
 * The results of a run as data: the records that become {@code results.json}, and from which its JSON Schema is made.
 *
 * <p>Numbers are unrounded here; what is printed of them stands beside them under {@code shown}. Optional entries are left
 * out of the file when they are empty.
 *
 * <p>Floor 0: imports the JDK only.
 */
@NullMarked
package comparand.document.result;

import org.jspecify.annotations.NullMarked;
