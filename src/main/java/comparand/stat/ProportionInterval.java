package comparand.stat;

/** Two-sided confidence intervals for a proportion, {@code x} events in {@code n} trials: one constant per method. */
public enum ProportionInterval {

    /**
     * The score interval without continuity correction,
     * {@code (p + z²/2n ± z √(p(1-p)/n + z²/4n²)) / (1 + z²/n)}.
     *
     * <p>Wilson, J Am Stat Assoc 1927;22:209-212.
     */
    WILSON {
        @Override
        Interval limits(int x, int n, double level) {
            double z = Quantiles.z((1 + level) / 2);
            double p = (double) x / n;
            double scale = 1 + z * z / n;
            double centre = (p + z * z / (2.0 * n)) / scale;
            double half = z * Math.sqrt(p * (1 - p) / n + z * z / (4.0 * n * n)) / scale;
            return new Interval(x == 0 ? 0 : Math.max(0, centre - half), x == n ? 1 : Math.min(1, centre + half));
        }
    },

    /**
     * The exact interval from the two tails of the binomial distribution; with no events the upper limit is
     * {@code 1 - (α/2)^(1/n)}.
     *
     * <p>Clopper and Pearson, Biometrika 1934;26:404-413.
     */
    EXACT {
        @Override
        Interval limits(int x, int n, double level) {
            double tail = (1 - level) / 2;
            double low = x == 0 ? 0 : Quantiles.beta(tail, x, n - x + 1.0);
            double high = x == n ? 1 : Quantiles.beta(1 - tail, x + 1.0, n - x);
            return new Interval(low, high);
        }
    };

    /**
     * The interval at a level.
     *
     * @throws IllegalArgumentException unless {@code 0 <= x <= n} and {@code n > 0}
     */
    public Interval of(int x, int n, double level) {
        if (x < 0 || n < 1 || x > n) {
            throw new IllegalArgumentException("x of n needs 0 <= x <= n and n > 0, got %d of %d".formatted(x, n));
        }
        Quantiles.requireLevel(level);
        return limits(x, n, level);
    }

    abstract Interval limits(int x, int n, double level);
}
