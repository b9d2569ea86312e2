/** Documents as plain text, for e-mail. */
@NullMarked
package comparand.write.text;

import org.jspecify.annotations.NullMarked;
