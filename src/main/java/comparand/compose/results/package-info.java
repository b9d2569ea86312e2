/** What a run found as data: the records of {@code results.json}. */
@NullMarked
package comparand.compose.results;

import org.jspecify.annotations.NullMarked;
