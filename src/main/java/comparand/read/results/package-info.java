/** Results of an earlier run, read from {@code results.json} by its published structure. */
@NullMarked
package comparand.read.results;

import org.jspecify.annotations.NullMarked;
