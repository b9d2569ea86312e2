package comparand.stat;

import java.util.SplittableRandom;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Random numbers that are the same for one seed wherever and whenever they are drawn.
 *
 * <p>The 64-bit words are those of SplitMix64 (Steele, Lea and Flood, OOPSLA 2014:453-472), as the JDK's
 * {@link SplittableRandom} gives them; what is made of the words (a whole number below a bound, a normal value) is made by
 * the random-number library, whose version the build fixes, because the JDK has changed its own way between releases. The
 * period of 2⁶⁴ is far beyond the 10⁸ words that a run draws.
 */
final class SeededRandom {

    private SeededRandom() {}

    static UniformRandomProvider of(long seed) {
        return new SplittableRandom(seed)::nextLong;
    }
}
