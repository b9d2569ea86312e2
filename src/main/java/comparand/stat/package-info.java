/**
 * Statistics over plain numbers: pure functions, each naming its method and paper.
 *
 * <p>Nothing here knows units, devices or documents. Levels are fractions ({@code 0.95}); tests are two-sided. Functions
 * throw {@link java.lang.IllegalArgumentException} where the method is not defined: the caller has let something
 * through.
 *
 * <p>Floor 0: imports the JDK and the statistics libraries.
 */
@NullMarked
package comparand.stat;

import org.jspecify.annotations.NullMarked;
