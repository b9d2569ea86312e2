package comparand.simulation;

import comparand.model.Verdict;

/** What somebody says of a pair, whoever it is. */
sealed interface Reading {

    /** What is said of the margin. */
    enum Reach {
        BEYOND,
        OPEN,
        WITHIN
    }

    /** Why nothing is said. */
    enum Why {
        /** Conditions differ or are not reported: shown, not compared. */
        SHOWN,
        /** One side gives nothing that could be tested. */
        UNTESTABLE,
        /** The interval allows both directions and the margin. */
        NOT_SETTLED,
        /** It depends on what the ± is. */
        EITHER_WAY,
        /** No local result to set it beside. */
        NOT_PAIRED
    }

    /**
     * A statement on the difference of the two.
     *
     * @param direction 1 for a higher local mean, -1 for a lower, 0 for none said
     */
    record Difference(int direction, Reach reach) implements Reading {
        public Difference {
            if (direction == 0 && reach != Reach.WITHIN) {
                throw new IllegalArgumentException("nothing is said");
            }
        }
    }

    /** The whole interval of the local mean on one side of a limit. */
    record Side(boolean meets) implements Reading {}

    /** Nothing is said. */
    record Withheld(Why why) implements Reading {}

    /** A verdict with the sign of its difference, which a difference smaller than the margin has too. */
    static Reading of(Verdict verdict, double difference) {
        return switch (verdict) {
            case HIGHER_BEYOND_MARGIN -> new Difference(1, Reach.BEYOND);
            case LOWER_BEYOND_MARGIN -> new Difference(-1, Reach.BEYOND);
            case HIGHER_MARGIN_OPEN, HIGHER -> new Difference(1, Reach.OPEN);
            case LOWER_MARGIN_OPEN, LOWER -> new Difference(-1, Reach.OPEN);
            case NONE_AS_LARGE_AS_MARGIN -> new Difference(0, Reach.WITHIN);
            case SMALLER_THAN_MARGIN -> new Difference(difference > 0 ? 1 : -1, Reach.WITHIN);
            case NOT_SETTLED -> new Withheld(Why.NOT_SETTLED);
        };
    }

    default boolean isAnswer() {
        return !(this instanceof Withheld);
    }

    default boolean isWithheld(Why why) {
        return this instanceof Withheld w && w.why() == why;
    }
}
