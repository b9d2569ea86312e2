/** Slides: every table, box and figure native and editable, on the masters of a house or on the tool's own. */
@NullMarked
package comparand.write.pptx;

import org.jspecify.annotations.NullMarked;
