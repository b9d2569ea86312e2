/**
 * Draws a chart: one layout, in points, onto any {@link comparand.write.figure.Surface}; as SVG and as PNG here, on pages
 * elsewhere.
 *
 * <p>What a figure says is decided before it comes here. Decided here is where things stand so that no text is cut off, lies
 * on another or on a mark.
 *
 * <p>Floor 4: imports {@code document} and {@code document.chart} alone.
 */
@NullMarked
package comparand.write.figure;

import org.jspecify.annotations.NullMarked;
