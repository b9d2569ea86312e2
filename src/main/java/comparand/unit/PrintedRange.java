package comparand.unit;

import static java.util.Objects.requireNonNull;

/** Two printed ends in units of the same dimension, the lower first. */
public record PrintedRange(Printed low, Printed high) {

    public PrintedRange {
        requireNonNull(low, "low");
        requireNonNull(high, "high");
        if (!low.unit().convertsTo(high.unit())) {
            throw new IllegalArgumentException("the ends of a range measure one thing, got " + low + " and " + high);
        }
        if (low.in(high.unit()) > high.number().toDouble()) {
            throw new IllegalArgumentException("a range runs upwards, got " + low + " to " + high);
        }
    }

    @Override
    public String toString() {
        return low.unit().equals(high.unit()) ? low.number() + " to " + high : low + " to " + high;
    }
}
