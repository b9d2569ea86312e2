package comparand.unit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The exponents of the seven base units of UCUM, in its order: metre, second, gram, radian, kelvin, coulomb, candela.
 *
 * <p>In UCUM the mole is a number, so an amount concentration has the dimension of a reciprocal volume.
 */
public record Dimension(List<Integer> exponents) {

    private static final List<String> BASE = List.of("m", "s", "g", "rad", "K", "C", "cd");

    public static final Dimension NONE = new Dimension(Collections.nCopies(BASE.size(), 0));

    public Dimension {
        exponents = List.copyOf(exponents);
        if (exponents.size() != BASE.size()) {
            throw new IllegalArgumentException(
                    "a dimension has %d exponents, got %s".formatted(BASE.size(), exponents));
        }
    }

    /** The dimension of one base unit. */
    static Dimension base(String code) {
        var e = new ArrayList<>(NONE.exponents);
        e.set(BASE.indexOf(code), 1);
        return new Dimension(e);
    }

    public Dimension times(Dimension other) {
        var e = new ArrayList<Integer>();
        for (int i = 0; i < exponents.size(); i++) {
            e.add(Math.addExact(exponents.get(i), other.exponents.get(i)));
        }
        return new Dimension(e);
    }

    public Dimension power(int n) {
        return new Dimension(
                exponents.stream().map(e -> Math.multiplyExact(e, n)).toList());
    }

    public boolean isNone() {
        return equals(NONE);
    }

    /** As a UCUM term over base units, {@code 1} for a bare number. */
    @Override
    public String toString() {
        var parts = new ArrayList<String>();
        for (int i = 0; i < exponents.size(); i++) {
            int e = exponents.get(i);
            if (e != 0) {
                parts.add(BASE.get(i) + (e == 1 ? "" : e));
            }
        }
        return parts.isEmpty() ? "1" : String.join(".", parts);
    }
}
