/**
 * Sets finished documents in one format each. Writers compute, round, word and order nothing.
 *
 * <p>The same document gives the same bytes on any day: no clock, no random names, no locale of the machine.
 *
 * <p>Floor 4: imports {@code document} alone, and each format's package its one library.
 */
@NullMarked
package comparand.write;

import org.jspecify.annotations.NullMarked;
