package comparand.model;

import static java.util.Objects.requireNonNull;

import comparand.metric.Effect;
import comparand.metric.Role;
import comparand.stat.Interval;
import java.util.Optional;

/**
 * What was found when one condition, or one respect of the definition, of the two sides was set side by side.
 *
 * @param of what kind of thing was compared
 * @param id the condition or aspect
 * @param tolerance the tolerance used, in words; empty where none applies
 * @param effect what the other side's circumstance, compared with ours, does to the metric by itself
 * @param because the reason for that, in one clause
 */
public record ConditionVerdict(
        Subject of,
        String id,
        String name,
        String shortName,
        Role role,
        Mark mark,
        String ours,
        String theirs,
        String tolerance,
        Effect effect,
        String because,
        Optional<Latitude> latitude) {

    /**
     * How a verdict on a condition in numbers hangs on its tolerance.
     *
     * @param ours the two ends of our side, alike for a single number, in the condition's unit
     * @param theirs the same of the other side
     * @param within the mark where the tolerance covers the distance
     * @param beyond what theirs does to the metric where it does not
     */
    public record Latitude(Interval ours, Interval theirs, Mark within, Effect beyond) {}

    /** What kind of thing was compared. */
    public enum Subject {
        UNIT,
        DEFINITION,
        CONDITION,
        LABEL
    }

    /** How it came out; the mark is the one printed in the condition line. */
    public enum Mark {
        SAME("="),
        MADE_SAME("≈"),
        DIFFERS("≠"),
        NOT_REPORTED("?"),
        NOT_APPLICABLE("·");

        private final String sign;

        Mark(String sign) {
            this.sign = sign;
        }

        public String sign() {
            return sign;
        }
    }

    public ConditionVerdict {
        requireNonNull(of, "of");
        requireNonNull(id, "id");
        requireNonNull(role, "role");
        requireNonNull(mark, "mark");
        requireNonNull(effect, "effect");
        requireNonNull(latitude, "latitude");
    }

    /** A verdict that no tolerance is about. */
    public ConditionVerdict(
            Subject of,
            String id,
            String name,
            String shortName,
            Role role,
            Mark mark,
            String ours,
            String theirs,
            String tolerance,
            Effect effect,
            String because) {
        this(of, id, name, shortName, role, mark, ours, theirs, tolerance, effect, because, Optional.empty());
    }

    public boolean decidesAgainst() {
        return role == Role.DECIDES && (mark == Mark.DIFFERS || mark == Mark.NOT_REPORTED);
    }
}
