package comparand.simulation;

import comparand.model.Step;
import java.util.Optional;

/**
 * A pair of a simulated library: what is true of it, what the tool says, what the naive reader says.
 *
 * @param library its number
 * @param published what is behind the published value; empty for a pair of two devices
 * @param made the step by which local results were made to meet the conditions of the published value, if one was
 * @param asPrinted the truth against the printed figure itself, where the tool took it as exact
 * @param naive empty where the naive reader has no such pair
 */
record Judged(
        int library,
        Kind kind,
        LocalStudy local,
        Optional<Published> published,
        Optional<Cause> cause,
        Truth truth,
        Optional<Truth> asPrinted,
        Reading tool,
        Optional<Step.Kind> made,
        Optional<Reading> naive) {

    /** What the two sides are. */
    enum Kind {
        /** Local results and a published value. */
        PUBLISHED,
        /** Local results and what is read off between two values of one source. */
        READ_OFF,
        /** The device and the one in use today, all hospitals together. */
        PRESENT,
        /** The same within one hospital. */
        WITHIN_HOSPITAL
    }

    boolean is(Cause other) {
        return cause.filter(c -> c == other).isPresent();
    }

    boolean is(Kind other) {
        return kind == other;
    }

    /** Whether its published value is sound: under the conditions at home, and with all that a test needs. */
    boolean isSound() {
        return published
                .filter(p -> p.unlike() == Unlike.ALIKE && p.print().isExplained())
                .isPresent();
    }

    /** Whether there is no true difference. */
    boolean isNull() {
        return truth.difference() == 0;
    }
}
