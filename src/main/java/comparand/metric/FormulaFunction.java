package comparand.metric;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The functions a formula may use. There are no others. */
enum FormulaFunction {
    SQRT(1, 1) {
        @Override
        double apply(double[] x) {
            return Math.sqrt(x[0]);
        }
    },
    EXP(1, 1) {
        @Override
        double apply(double[] x) {
            return Math.exp(x[0]);
        }
    },
    LN(1, 1) {
        @Override
        double apply(double[] x) {
            return Math.log(x[0]);
        }
    },
    LOG10(1, 1) {
        @Override
        double apply(double[] x) {
            return Math.log10(x[0]);
        }
    },
    MIN(2, 8) {
        @Override
        double apply(double[] x) {
            return Arrays.stream(x).min().orElse(Double.NaN);
        }
    },
    MAX(2, 8) {
        @Override
        double apply(double[] x) {
            return Arrays.stream(x).max().orElse(Double.NaN);
        }
    },
    ABS(1, 1) {
        @Override
        double apply(double[] x) {
            return Math.abs(x[0]);
        }
    };

    private final int least;
    private final int most;

    FormulaFunction(int least, int most) {
        this.least = least;
        this.most = most;
    }

    abstract double apply(double[] x);

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    boolean takes(int arguments) {
        return least <= arguments && arguments <= most;
    }

    /** How many it takes, in words. */
    String arguments() {
        return least == most ? "one number" : "%d to %d numbers".formatted(least, most);
    }

    static Optional<FormulaFunction> called(String word) {
        return Arrays.stream(values()).filter(f -> f.word().equals(word)).findFirst();
    }
}
