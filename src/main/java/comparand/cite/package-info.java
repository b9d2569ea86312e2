/**
 * References in the styles of journals: citations in the text and the list at its end, made from CSL-JSON fields by the
 * Citation Style Language, offline.
 *
 * <p>Floor 0: imports nothing of this project.
 */
@NullMarked
package comparand.cite;

import org.jspecify.annotations.NullMarked;
