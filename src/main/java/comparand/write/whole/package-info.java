/**
 * Files and folders that are whole at every moment: the old ones or the new ones, whatever stops the program.
 *
 * <p>Floor 4: knows nothing of what is written.
 */
@NullMarked
package comparand.write.whole;

import org.jspecify.annotations.NullMarked;
