/**
 * What a file was made from, as a key: two files with one key have the same bytes, so that the second need not be made.
 *
 * <p>Floor 4: knows records and lists, not what they mean.
 */
@NullMarked
package comparand.write.rebuild;

import org.jspecify.annotations.NullMarked;
