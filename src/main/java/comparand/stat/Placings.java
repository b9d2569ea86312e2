package comparand.stat;

import java.util.List;

/**
 * Where the mark of one value was placed in a picture, by one person or several.
 *
 * @param uncertainty standard uncertainty of one placing, in picture points
 * @param centre how uncertain the centre of the mark itself is, in picture points: half its size, or 0
 * @param byReader the placings of each person, in picture points; each placed it at least once
 */
public record Placings(double uncertainty, double centre, List<List<Double>> byReader) {

    public Placings {
        byReader = byReader.stream().map(List::copyOf).toList();
        if (byReader.isEmpty() || byReader.stream().anyMatch(List::isEmpty)) {
            throw new IllegalArgumentException("a mark was placed by somebody, and by each at least once");
        }
    }

    /** Each person counts once, however often they placed it. */
    public double mean() {
        return byReader.stream().mapToDouble(Placings::mean).sum() / byReader.size();
    }

    /** The standard deviation of repeats by the same person, pooled over persons; 0 where nobody repeated it. */
    public double repeats() {
        double squares = 0;
        int degrees = 0;
        for (var placings : byReader) {
            double mean = mean(placings);
            for (double p : placings) {
                squares += (p - mean) * (p - mean);
            }
            degrees += placings.size() - 1;
        }
        return degrees == 0 ? 0 : Math.sqrt(squares / degrees);
    }

    /** The standard deviation of the persons' means, which for two is {@code |a - b|/√2}; 0 for one person. */
    public double readers() {
        return byReader.size() < 2
                ? 0
                : Moments.of(byReader.stream().mapToDouble(Placings::mean).toArray())
                        .sd();
    }

    private static double mean(List<Double> placings) {
        return placings.stream().mapToDouble(p -> p).sum() / placings.size();
    }
}
