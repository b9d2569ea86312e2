package comparand.metric;

import static java.util.Objects.requireNonNull;

import comparand.unit.Dimension;
import comparand.unit.Unit;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/** A part of a formula, with the place it was written at. */
sealed interface FormulaNode {

    double value(Map<String, Double> numbers);

    /**
     * The dimension of its value.
     *
     * @throws Unlike if its parts do not fit together
     */
    Dimension dimension(Map<String, Unit> units);

    void letters(Set<String> found);

    /** The number, if no letter takes part in it. */
    default boolean isConstant() {
        var letters = new TreeSet<String>();
        letters(letters);
        return letters.isEmpty();
    }

    /** Quantities that do not fit together, and where. */
    final class Unlike extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final int at;
        private final int length;
        private final String problem;
        private final String fix;

        Unlike(int at, int length, String problem, String fix) {
            super(problem);
            this.at = at;
            this.length = length;
            this.problem = problem;
            this.fix = fix;
        }

        int at() {
            return at;
        }

        int length() {
            return length;
        }

        String problem() {
            return problem;
        }

        String fix() {
            return fix;
        }
    }

    /** A number as written. */
    record Literal(double number) implements FormulaNode {
        @Override
        public double value(Map<String, Double> numbers) {
            return number;
        }

        @Override
        public Dimension dimension(Map<String, Unit> units) {
            return Dimension.NONE;
        }

        @Override
        public void letters(Set<String> found) {}
    }

    /** A letter that stands for an input. */
    record Letter(String name) implements FormulaNode {
        @Override
        public double value(Map<String, Double> numbers) {
            return requireNonNull(numbers.get(name), name);
        }

        @Override
        public Dimension dimension(Map<String, Unit> units) {
            return requireNonNull(units.get(name), name).dimension();
        }

        @Override
        public void letters(Set<String> found) {
            found.add(name);
        }
    }

    /** A sign before a part. */
    record Negative(FormulaNode of) implements FormulaNode {
        @Override
        public double value(Map<String, Double> numbers) {
            return -of.value(numbers);
        }

        @Override
        public Dimension dimension(Map<String, Unit> units) {
            return of.dimension(units);
        }

        @Override
        public void letters(Set<String> found) {
            of.letters(found);
        }
    }

    /** Two parts with a sign between them, which stands at {@code at}. */
    record Pair(char sign, FormulaNode left, FormulaNode right, int at) implements FormulaNode {
        @Override
        public double value(Map<String, Double> numbers) {
            double a = left.value(numbers);
            double b = right.value(numbers);
            return switch (sign) {
                case '+' -> a + b;
                case '-' -> a - b;
                case '*' -> a * b;
                case '/' -> a / b;
                default -> Math.pow(a, b);
            };
        }

        @Override
        public Dimension dimension(Map<String, Unit> units) {
            var a = left.dimension(units);
            var b = right.dimension(units);
            return switch (sign) {
                case '+', '-' -> {
                    if (!a.equals(b)) {
                        throw new Unlike(
                                at,
                                1,
                                "`%s` stands between %s and %s".formatted(sign, words(a), words(b)),
                                "add and subtract like quantities only, or declare `empirical: yes`");
                    }
                    yield a;
                }
                case '*' -> a.times(b);
                case '/' -> a.times(b.power(-1));
                default -> power(a, b);
            };
        }

        private Dimension power(Dimension a, Dimension b) {
            if (!b.isNone()) {
                throw new Unlike(
                        at, 1, "the exponent is %s, not a bare number".formatted(words(b)), "write a number there");
            }
            if (a.isNone()) {
                return a;
            }
            double exponent = right.isConstant() ? right.value(Map.of()) : Double.NaN;
            if (exponent != Math.rint(exponent) || Math.abs(exponent) > 12) {
                throw new Unlike(
                        at,
                        1,
                        "%s is raised to something other than a whole number".formatted(words(a)),
                        "raise it to a whole number, use `sqrt()`, or declare `empirical: yes`");
            }
            return a.power((int) exponent);
        }

        @Override
        public void letters(Set<String> found) {
            left.letters(found);
            right.letters(found);
        }
    }

    /** A function of the list, with its name at {@code at}. */
    record Call(FormulaFunction function, List<FormulaNode> of, int at) implements FormulaNode {
        public Call {
            of = List.copyOf(of);
        }

        @Override
        public double value(Map<String, Double> numbers) {
            ToDoubleFunction<FormulaNode> value = n -> n.value(numbers);
            return function.apply(of.stream().mapToDouble(value).toArray());
        }

        @Override
        public Dimension dimension(Map<String, Unit> units) {
            var first = of.get(0).dimension(units);
            for (var other : of) {
                if (!other.dimension(units).equals(first)) {
                    throw unlike("compares unlike quantities", "compare like quantities only");
                }
            }
            return switch (function) {
                case MIN, MAX, ABS -> first;
                case SQRT -> root(first);
                case EXP, LN, LOG10 -> {
                    if (!first.isNone()) {
                        throw unlike(
                                "is taken of " + words(first),
                                "divide by a quantity of the same kind first, or declare `empirical: yes`");
                    }
                    yield first;
                }
            };
        }

        private Dimension root(Dimension of) {
            if (of.exponents().stream().anyMatch(e -> e % 2 != 0)) {
                throw unlike("is taken of " + words(of) + ", which is no square", "declare `empirical: yes`");
            }
            return new Dimension(of.exponents().stream().map(e -> e / 2).toList());
        }

        private Unlike unlike(String what, String fix) {
            return new Unlike(at, function.word().length(), "`%s` %s".formatted(function.word(), what), fix);
        }

        @Override
        public void letters(Set<String> found) {
            of.forEach(n -> n.letters(found));
        }
    }

    private static String words(Dimension d) {
        return d.isNone() ? "a bare number" : "a quantity in " + d;
    }
}
