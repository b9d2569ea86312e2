/**
 * The manual, made from what the program itself knows: the catalogue of metrics, the types of records, the commands, the rules
 * and what they print. Nothing is said here that is said elsewhere; a page is put together and not written.
 *
 * <p>Floor 4: sees the catalogue and the units below it; records, commands and the tool itself are given to it as data.
 */
@NullMarked
package comparand.manual;

import org.jspecify.annotations.NullMarked;
