package comparand.simulation;

import comparand.simulation.Reading.Difference;
import comparand.simulation.Reading.Reach;
import comparand.simulation.Reading.Side;

/**
 * What is true of a pair, and which statements it makes wrong.
 *
 * @param difference the true difference under the same conditions, ours minus theirs, mmHg
 * @param margin mmHg
 * @param toLimit how far the true local mean lies below the limit, for a limit, mmHg
 */
record Truth(double difference, double margin, double toLimit) {

    static Truth of(double difference, double margin) {
        return new Truth(difference, margin, Double.NaN);
    }

    boolean wrong(Reading said) {
        return wrongDirection(said)
                || wrongWithin(said)
                || wrongBeyond(said)
                || (said instanceof Side side && side.meets() != (toLimit >= 0));
    }

    /** Higher or lower, where there is no difference or the other one. */
    boolean wrongDirection(Reading said) {
        return said instanceof Difference d && d.direction() != 0 && d.direction() != (int) Math.signum(difference);
    }

    /** No difference as large as the margin, or one smaller than it, where it is as large. */
    boolean wrongWithin(Reading said) {
        return said instanceof Difference d && d.reach() == Reach.WITHIN && Math.abs(difference) >= margin;
    }

    /** More than the margin, where it is not. */
    boolean wrongBeyond(Reading said) {
        return said instanceof Difference d && d.reach() == Reach.BEYOND && d.direction() * difference <= margin;
    }

    boolean rightDirection(Reading said) {
        return said instanceof Difference d && d.direction() != 0 && !wrongDirection(said);
    }

    boolean rightWithin(Reading said) {
        return said instanceof Difference d && d.reach() == Reach.WITHIN && !wrongWithin(said);
    }

    boolean rightBeyond(Reading said) {
        return said instanceof Difference d && d.reach() == Reach.BEYOND && !wrongBeyond(said);
    }

    /** The true difference in margins: 0, 0.5, 1 or 2. */
    double inMargins() {
        return Math.abs(difference) / margin;
    }
}
