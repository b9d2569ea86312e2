/**
 * From comparisons to finished documents: rounds, chooses words, orders, letters notes. All sentences come from one file
 * per language.
 *
 * <p>Floor 4: imports floors 0 to 3.
 */
@NullMarked
package comparand.compose;

import org.jspecify.annotations.NullMarked;
