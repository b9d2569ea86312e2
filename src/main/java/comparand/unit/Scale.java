package comparand.unit;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How a number in a unit becomes a number in base units, and back. Exact where the definition is rational.
 */
sealed interface Scale {

    Scale ONE = new Ratio(BigFraction.ONE);

    /** The amount in base units. */
    BigFraction toBase(BigFraction value);

    BigFraction fromBase(BigFraction base);

    double toBase(double value);

    double fromBase(double base);

    /** What one step on this scale is in base units; differences convert by it alone. */
    BigFraction step();

    /** {@code base = factor × value}: nearly every unit. */
    record Ratio(BigFraction factor) implements Scale {

        public Ratio {
            if (factor.signum() <= 0) {
                throw new IllegalArgumentException("a unit has a positive size, got " + factor);
            }
        }

        @Override
        public BigFraction toBase(BigFraction value) {
            return value.multiply(factor);
        }

        @Override
        public BigFraction fromBase(BigFraction base) {
            return base.divide(factor);
        }

        @Override
        public double toBase(double value) {
            return value * factor.doubleValue();
        }

        @Override
        public double fromBase(double base) {
            return base / factor.doubleValue();
        }

        @Override
        public BigFraction step() {
            return factor;
        }
    }

    /** {@code base = (value + offset) × factor}: degrees Celsius and Fahrenheit. */
    record Offset(BigFraction offset, BigFraction factor) implements Scale {

        @Override
        public BigFraction toBase(BigFraction value) {
            return value.add(offset).multiply(factor);
        }

        @Override
        public BigFraction fromBase(BigFraction base) {
            return base.divide(factor).subtract(offset);
        }

        @Override
        public double toBase(double value) {
            return (value + offset.doubleValue()) * factor.doubleValue();
        }

        @Override
        public double fromBase(double base) {
            return base / factor.doubleValue() - offset.doubleValue();
        }

        @Override
        public BigFraction step() {
            return factor;
        }
    }

    /** {@code base = factor × 10^(-value)}: pH. Not rational, so exact only within its own unit. */
    record NegativeLog10(BigFraction factor) implements Scale {

        @Override
        public BigFraction toBase(BigFraction value) {
            return BigFraction.from(toBase(value.doubleValue()));
        }

        @Override
        public BigFraction fromBase(BigFraction base) {
            return BigFraction.from(fromBase(base.doubleValue()));
        }

        @Override
        public double toBase(double value) {
            return factor.doubleValue() * Math.pow(10, -value);
        }

        @Override
        public double fromBase(double base) {
            return -Math.log10(base / factor.doubleValue());
        }

        @Override
        public BigFraction step() {
            throw new ArithmeticException("a step on a logarithmic scale has no fixed size");
        }
    }
}
