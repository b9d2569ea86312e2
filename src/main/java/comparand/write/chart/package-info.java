/**
 * Charts that office programs draw and a person can edit: scatter charts with their data beside them.
 *
 * <p>Floor 4: imports {@code document.chart} alone, and the library for office files.
 */
@NullMarked
package comparand.write.chart;

import org.jspecify.annotations.NullMarked;
