/**
 * Records as plain text: a new file in one stable form, and an old file changed only where it must be, with every comment and
 * every line that says the same left as it was.
 */
@NullMarked
package comparand.write.yaml;

import org.jspecify.annotations.NullMarked;
