package comparand.model;

import static java.util.Objects.requireNonNull;

import comparand.stat.StraightLine;
import comparand.unit.Unit;

/**
 * A straight line through one point per unit or case, from which an estimate was taken.
 *
 * @param along what it runs along, in words, with the unit of its x
 * @param of what it gives, in words, with the unit of its y
 */
public record FittedLine(String along, Unit alongUnit, String of, Unit ofUnit, StraightLine line) {
    public FittedLine {
        requireNonNull(along, "along");
        requireNonNull(alongUnit, "alongUnit");
        requireNonNull(of, "of");
        requireNonNull(ofUnit, "ofUnit");
        requireNonNull(line, "line");
    }
}
