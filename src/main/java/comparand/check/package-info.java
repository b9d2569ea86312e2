/**
 * Rules on the library as written: one rule, one file, one code.
 *
 * <p>A rule's javadoc has three parts under fixed words: <em>What it checks</em>, <em>Why it matters</em>, <em>What to
 * write instead</em>. STOP means nothing is written, HOLD keeps one value out of comparisons, NOTE is printed among the
 * limitations.
 *
 * <p>Floor 4: imports floors 0 to 3.
 */
@NullMarked
package comparand.check;

import org.jspecify.annotations.NullMarked;
