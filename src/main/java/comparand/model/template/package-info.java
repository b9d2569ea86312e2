/**
 * What a report contains and how it looks, as its house wants it: the records of {@code templates/}.
 *
 * <p>Floor 3.
 */
@NullMarked
package comparand.model.template;

import org.jspecify.annotations.NullMarked;
