/**
 * Where the parts of a slide stand, how large their text is, and whether it can be read: worked out once, so that what is
 * checked is what is drawn.
 *
 * <p>Lengths are in points, 72 to the inch, from the upper left corner of the slide. Floor 0: imports the JDK only.
 */
@NullMarked
package comparand.document.talk.layout;

import org.jspecify.annotations.NullMarked;
