package comparand.metric;

import static java.util.Objects.requireNonNull;

import comparand.unit.Printed;
import java.util.List;

/**
 * How a value obtained with other blood at the inlet is brought to standard blood. Nothing is done unless the outlet was
 * full: then it held all it could whatever came in, and only the inlet moves the value. A device at its limit gives another
 * outlet for another inlet, and no arithmetic tells which.
 *
 * @param inlet the condition that differs
 * @param standard its standard amount
 * @param outlet the condition that must have been reported
 * @param full what the outlet must at least have been
 * @param needs further conditions the shift takes
 * @param formula of the shift in letters
 * @param shift what is added to the value, in the metric's unit; takes {@link #FROM} and {@link #TO} in the unit of the inlet
 */
public record InletStandard(
        Condition inlet,
        Printed standard,
        Condition outlet,
        Printed full,
        List<Input> needs,
        String formula,
        Citation citation,
        Computation shift) {

    /** The inlet as reported. */
    public static final String FROM = "from";

    /** The inlet as it shall be. */
    public static final String TO = "to";

    public InletStandard {
        requireNonNull(standard, "standard");
        requireNonNull(full, "full");
        requireNonNull(citation, "citation");
        requireNonNull(shift, "shift");
        needs = List.copyOf(needs);
        if (!inlet.isNumber() || !outlet.isNumber()) {
            throw new IllegalArgumentException("inlet and outlet are conditions in numbers");
        }
    }
}
