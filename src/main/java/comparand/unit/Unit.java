package comparand.unit;

import static java.util.Objects.requireNonNull;

import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * A unit of measure: its UCUM code, the way the writer spelled it, its dimension and its exact size.
 *
 * <p>Two units are equal when they have the same dimension and the same scale, whatever they are called:
 * {@code mm[Hg].min/L} equals {@code [wood'U]}. The spelling is for printing only.
 */
public final class Unit {

    public static final Unit ONE = new Unit("1", "", Dimension.NONE, Scale.ONE);

    private final String code;
    private final String spelling;
    private final Dimension dimension;
    private final Scale scale;
    private final boolean isNumber;
    private final int hash;
    private @Nullable Factor lastFactor;

    Unit(String code, String spelling, Dimension dimension, Scale scale) {
        this.code = requireNonNull(code, "code");
        this.spelling = requireNonNull(spelling, "spelling");
        this.dimension = requireNonNull(dimension, "dimension");
        this.scale = requireNonNull(scale, "scale");
        isNumber = dimension.isNone() && scale.equals(Scale.ONE);
        hash = Objects.hash(dimension, scale);
    }

    /**
     * A unit this program itself names, in trade or UCUM spelling.
     *
     * @throws IllegalArgumentException if it is no unit
     */
    public static Unit of(String spelling) {
        return TradeSpelling.read(spelling).orThrow();
    }

    /** The case-sensitive UCUM code. */
    public String code() {
        return code;
    }

    /** As the writer spelled it; empty for a bare number. */
    public String spelling() {
        return spelling;
    }

    /** For columns of units and data, where nothing would be a gap: 1 for plain numbers. */
    public String named() {
        return isNumber() ? "1" : spelling;
    }

    public Dimension dimension() {
        return dimension;
    }

    Scale scale() {
        return scale;
    }

    public boolean isNumber() {
        return isNumber;
    }

    /** Whether numbers in it are logarithms, as pH is: then they do not add up. */
    public boolean isLogarithmic() {
        return scale instanceof Scale.NegativeLog10;
    }

    /** Whether numbers in this unit can be converted to the other. */
    public boolean convertsTo(Unit other) {
        return dimension.equals(other.dimension);
    }

    /**
     * Exactly the same amount in another unit.
     *
     * @throws IllegalArgumentException if the dimensions differ: the checker has let a fault through
     */
    public BigFraction convert(BigFraction value, Unit target) {
        requireConvertible(target);
        return scale.equals(target.scale) ? value : target.scale.fromBase(scale.toBase(value));
    }

    /**
     * The same amount in another unit, in double precision (one rounding of the exact factor).
     *
     * @throws IllegalArgumentException if the dimensions differ
     */
    public double convert(double value, Unit target) {
        var last = lastFactor;
        if (last != null && last.target.equals(target)) {
            return value * last.number;
        }
        if (equals(target)) {
            return value;
        }
        requireConvertible(target);
        if (scale instanceof Scale.Ratio from && target.scale instanceof Scale.Ratio to) {
            double factor = from.factor().divide(to.factor()).doubleValue();
            lastFactor = new Factor(target, factor);
            return value * factor;
        }
        return target.scale.fromBase(scale.toBase(value));
    }

    /** The factor that was asked for last: columns of numbers ask for one again and again. */
    private record Factor(Unit target, double number) {}

    /**
     * How many steps of the target one step of this unit is: the factor for differences, tolerances and spreads, in
     * which an offset (°C against K) must not take part.
     *
     * @throws IllegalArgumentException if the dimensions differ
     */
    public BigFraction stepIn(Unit target) {
        requireConvertible(target);
        return scale.equals(target.scale) ? BigFraction.ONE : scale.step().divide(target.scale.step());
    }

    /** The exact factor of {@link #stepIn} as a number or a fraction: {@code 1000}, {@code 50000/66661}. */
    public String factorTo(Unit target) {
        return stepIn(target).toString().replace(" ", "");
    }

    private void requireConvertible(Unit target) {
        if (!convertsTo(target)) {
            throw new IllegalArgumentException(code + " does not convert to " + target.code);
        }
    }

    Unit spelled(String newSpelling) {
        return new Unit(code, newSpelling, dimension, scale);
    }

    @Override
    public boolean equals(Object other) {
        return this == other
                || (other instanceof Unit that
                        && hash == that.hash
                        && dimension.equals(that.dimension)
                        && scale.equals(that.scale));
    }

    @Override
    public int hashCode() {
        return hash;
    }

    /** The spelling, or the code where there is none. */
    @Override
    public String toString() {
        return spelling.isEmpty() ? code : spelling;
    }
}
