package comparand.demo;

import comparand.stat.Moments;
import java.util.Arrays;
import java.util.Random;

/**
 * Finds whole numbers of recorded steps (1 mmHg, 0.1 kPa, one platelet count) whose results have a printed mean and SD.
 *
 * <p>A recorded number {@code k} of case {@code i} gives the result {@code offset + perStep[i] · k}.
 */
final class CaseDataFit {

    private static final double MEAN_WITHIN = 0.01;
    private static final double SD_WITHIN = 0.03;
    private static final int TRIES = 2_000_000;

    private final double offset;
    private final double[] perStep;
    private final long lowest;
    private final long highest;

    CaseDataFit(double offset, double[] perStep, long lowest, long highest) {
        this.offset = offset;
        this.perStep = perStep.clone();
        this.lowest = lowest;
        this.highest = highest;
    }

    /** Results that are the recorded numbers themselves, times one step. */
    static CaseDataFit steps(int n, double step, double lowest, double highest) {
        var perStep = new double[n];
        Arrays.fill(perStep, step);
        return new CaseDataFit(0, perStep, (long) Math.ceil(lowest / step), (long) Math.floor(highest / step));
    }

    /** Recorded numbers in the order of {@code shape}, which says how the results lie to each other. */
    long[] to(Target target, double[] shape, Random random) {
        var numbers = start(target, shape);
        double off = distance(numbers, target);
        for (int i = 0; i < TRIES; i++) {
            if (isMetBy(numbers, target)) {
                return numbers;
            }
            var tried = numbers.clone();
            for (int moves = 1 + random.nextInt(5); moves > 0; moves--) {
                moveOne(tried, random);
            }
            double distance = distance(tried, target);
            if (distance < off) {
                numbers = tried;
                off = distance;
            }
        }
        throw new IllegalStateException("no numbers between %d and %d give %s".formatted(lowest, highest, target));
    }

    private double[] results(long[] numbers) {
        var results = new double[numbers.length];
        for (int i = 0; i < results.length; i++) {
            results[i] = offset + perStep[i] * numbers[i];
        }
        return results;
    }

    private long[] start(Target target, double[] shape) {
        var moments = Moments.of(shape);
        var numbers = new long[shape.length];
        for (int i = 0; i < numbers.length; i++) {
            double wanted = target.meanValue() + (shape[i] - moments.mean()) / moments.sd() * target.sdValue();
            numbers[i] = Math.min(highest, Math.max(lowest, Math.round((wanted - offset) / perStep[i])));
        }
        return numbers;
    }

    private void moveOne(long[] numbers, Random random) {
        int i = random.nextInt(numbers.length);
        long moved = numbers[i] + (random.nextBoolean() ? 1 : -1);
        numbers[i] = Math.min(highest, Math.max(lowest, moved));
    }

    private boolean isMetBy(long[] numbers, Target target) {
        var moments = Moments.of(results(numbers));
        return Math.abs(moments.mean() - target.meanValue()) <= MEAN_WITHIN
                && Math.abs(moments.sd() - target.sdValue()) <= SD_WITHIN;
    }

    private double distance(long[] numbers, Target target) {
        var moments = Moments.of(results(numbers));
        return Math.abs(moments.mean() - target.meanValue()) + Math.abs(moments.sd() - target.sdValue()) / 3;
    }
}
