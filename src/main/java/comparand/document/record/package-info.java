/**
 * A record of the library as it is about to be written, or as it stands: an ordered tree whose leaves are text, exactly as
 * the file has it. Nothing in it is a number, a date or a yes.
 */
@NullMarked
package comparand.document.record;

import org.jspecify.annotations.NullMarked;
