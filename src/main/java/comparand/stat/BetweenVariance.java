package comparand.stat;

/**
 * The variance τ² of true values between sources or centres, not below 0: one constant per method. Compared by Veroniki et
 * al., Res Synth Methods 2016;7:55-79.
 */
public enum BetweenVariance {

    /**
     * {@code (Q - (k-1)) / (Σw - Σw²/Σw)} with {@code w = 1/v}; DerSimonian and Laird, Control Clin Trials 1986;7:177-188
     * (from memory). Kept because papers print it.
     */
    DERSIMONIAN_LAIRD {
        @Override
        public double of(Effects effects) {
            double w = effects.weights(0, 1);
            double excess = effects.squares(0, 1) - (effects.size() - 1);
            return Math.max(0, excess / (w - effects.weights(0, 2) / w));
        }
    },

    /**
     * The root of {@code Σ (y - μ)²/(v + τ²) = k - 1}, which falls in τ²; Paule and Mandel, J Res Natl Bur Stand
     * 1982;87:377-385 (from memory). Needs no likelihood.
     */
    PAULE_MANDEL {
        @Override
        public double of(Effects effects) {
            return QProfile.root(effects, effects.size() - 1);
        }
    },

    /**
     * Where the restricted likelihood is highest: {@code Σw²(y-μ)² - Σw + Σw²/Σw = 0} with {@code w = 1/(v + τ²)}, and 0
     * where no root is higher than that; Viechtbauer, J Educ Behav Stat 2005;30:261-293 (from memory).
     */
    RESTRICTED_LIKELIHOOD {
        @Override
        public double of(Effects effects) {
            return peak(effects, true);
        }
    },

    /** The same without the last term; biased low with few sources, kept because papers print it. */
    MAXIMUM_LIKELIHOOD {
        @Override
        public double of(Effects effects) {
            return peak(effects, false);
        }
    };

    public abstract double of(Effects effects);

    /** The logarithm of the likelihood of τ² with the mean profiled out, up to a constant. */
    static double logLikelihood(Effects effects, double tau2, boolean restricted) {
        double logs = effects.each().stream()
                .mapToDouble(e -> Math.log(e.variance() + tau2))
                .sum();
        double last = restricted ? Math.log(effects.weights(tau2, 1)) : 0;
        return -(logs + effects.squares(tau2, 1) + last) / 2;
    }

    /** Twice the slope of {@link #logLikelihood}. */
    static double score(Effects effects, double tau2, boolean restricted) {
        double w = effects.weights(tau2, 1);
        return effects.squares(tau2, 2) - w + (restricted ? effects.weights(tau2, 2) / w : 0);
    }

    private static double peak(Effects effects, boolean restricted) {
        return LikelihoodPeak.from0(
                t -> score(effects, t, restricted),
                t -> logLikelihood(effects, t, restricted),
                10 * (effects.spread() + effects.largestVariance()));
    }
}
