package comparand.calibration;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/** The numbers that the trials of one cell, or one simulated library, draw. */
public final class Draw {

    private final UniformRandomProvider random;
    private final ContinuousDistribution.Sampler normal;

    public Draw(long seed) {
        random = new SplittableRandom(seed)::nextLong;
        normal = NormalDistribution.of(0, 1).createSampler(random);
    }

    public double normal(double mean, double sd) {
        return mean + sd * normal.sample();
    }

    public double[] normals(int n, double mean, double sd) {
        double[] values = new double[n];
        Arrays.setAll(values, i -> normal(mean, sd));
        return values;
    }

    public double uniform(double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    /** From and to are both possible. */
    public int whole(int from, int to) {
        return random.nextInt(from, to + 1);
    }

    public long seed() {
        return random.nextLong();
    }
}
