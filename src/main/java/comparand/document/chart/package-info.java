/**
 * Figures as data and meaning: points, intervals, labels, panels. How they are drawn, as vectors, pixels or native charts,
 * is the writers' business; what they say is decided here.
 *
 * <p>Floor 0: imports the JDK only.
 */
@NullMarked
package comparand.document.chart;

import org.jspecify.annotations.NullMarked;
