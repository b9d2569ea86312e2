package comparand.model;

/**
 * The smallest difference that would change the decision.
 *
 * @param value in the metric's unit, positive
 * @param text as the dossier writes it
 */
public record Margin(double value, String text, String reason) {

    public Margin {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("a margin is a positive number, got " + value);
        }
    }
}
