/** Numbers, names and sentences, printed alike in every document of a run. */
@NullMarked
package comparand.compose.text;

import org.jspecify.annotations.NullMarked;
