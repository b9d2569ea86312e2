/** All that a run has to say, as it is handed to the writers. */
@NullMarked
package comparand.document.publication;

import org.jspecify.annotations.NullMarked;
