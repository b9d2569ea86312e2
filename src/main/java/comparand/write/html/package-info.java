/**
 * A page for a screen as one HTML file: readable and complete without scripts, asking nothing of any network.
 *
 * <p>Floor 4: imports the document, and the drawing of figures.
 */
@NullMarked
package comparand.write.html;

import org.jspecify.annotations.NullMarked;
