/**
 * Separated values as rows of raw data, streamed, in the encoding and with the separator that are declared; and what can be
 * seen of both where nobody has declared them yet.
 *
 * <p>Floor 4: imports floors 0 to 3, and the CSV parser.
 */
@NullMarked
package comparand.read.csv;

import org.jspecify.annotations.NullMarked;
