package comparand.metric;

import static java.util.Objects.requireNonNull;

/** How one metric depends on one condition. */
public record ConditionUse(Condition condition, Role role, Tolerance tolerance, Influence influence) {

    public ConditionUse {
        requireNonNull(condition, "condition");
        requireNonNull(role, "role");
        requireNonNull(tolerance, "tolerance");
        requireNonNull(influence, "influence");
        if (!condition.isNumber() && !(tolerance instanceof Tolerance.Equal)) {
            throw new IllegalArgumentException(condition.id() + " is named in words and can only be equal");
        }
    }

    public ConditionUse withTolerance(Tolerance other) {
        return new ConditionUse(condition, role, other, influence);
    }
}
