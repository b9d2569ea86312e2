/**
 * References of published works: what a citation holds, which of them are the same work or the same study, and what a library
 * would write of them. Nothing is looked up anywhere; formats are read and written in {@code reference.format}.
 */
@NullMarked
package comparand.reference;

import org.jspecify.annotations.NullMarked;
