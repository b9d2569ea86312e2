package comparand.stat;

/**
 * The factor k of a two-sided tolerance interval {@code mean ± k s}: with a confidence γ, at least a share p of a normal
 * population lies within. One constant per method.
 */
public enum ToleranceFactor {

    /**
     * {@code k = z((1+p)/2) √( v(1 + 1/n)/χ²(1-γ, v) )}, v = n - 1; Howe, J Am Stat Assoc 1969;64:610-620 (from memory), in
     * the form of the NIST/SEMATECH e-Handbook 7.2.6.3.
     */
    HOWE {
        @Override
        double factor(int n, double share, double confidence) {
            double v = n - 1;
            return Quantiles.z((1 + share) / 2)
                    * Math.sqrt(v * (1 + 1.0 / n) / Quantiles.chiSquared(1 - confidence, v));
        }
    },

    /**
     * The k at which {@code 2√n ∫₀ P(χ²_v > v r(z)²/k²) φ(z√n) dz = γ}, where {@code Φ(z+r) - Φ(z-r) = p}; Odeh, Commun Stat
     * Simul Comput 1978;7:183-201 (from memory).
     */
    EXACT {
        @Override
        double factor(int n, double share, double confidence) {
            var cover = new ToleranceCover(n, share);
            double howe = HOWE.factor(n, share, confidence);
            return Roots.between(k -> cover.confidence(k) - confidence, howe / 4, howe * 4);
        }
    };

    /**
     * The factor for n values, at least 2.
     *
     * @throws IllegalArgumentException unless n is at least 2 and both shares lie between 0 and 1
     */
    public double of(int n, double share, double confidence) {
        SpreadConversion.requireCount(n, 2);
        Quantiles.requireLevel(share);
        Quantiles.requireLevel(confidence);
        return factor(n, share, confidence);
    }

    /** {@code mean ± k s}. */
    public Interval interval(Moments sample, double share, double confidence) {
        return Interval.around(sample.mean(), of(sample.n(), share, confidence) * sample.sd());
    }

    abstract double factor(int n, double share, double confidence);
}
