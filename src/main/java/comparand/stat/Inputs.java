package comparand.stat;

import java.util.List;

/** The inputs of a formula with their correlations. */
public final class Inputs {

    private final List<Input> each;
    private final double[][] correlations;

    private Inputs(List<Input> each, double[][] correlations) {
        this.each = List.copyOf(each);
        this.correlations = correlations;
    }

    public static Inputs independent(List<Input> each) {
        double[][] unit = new double[each.size()][each.size()];
        for (int i = 0; i < unit.length; i++) {
            unit[i][i] = 1;
        }
        return new Inputs(each, unit);
    }

    /** The same inputs with the correlation of two of them, which are normal. */
    public Inputs correlated(int first, int second, double correlation) {
        if (first == second || !(Math.abs(correlation) <= 1)) {
            throw new IllegalArgumentException("not a correlation of two inputs: " + correlation);
        }
        if (each.get(first).shape() != Input.Shape.NORMAL || each.get(second).shape() != Input.Shape.NORMAL) {
            throw new IllegalArgumentException("only normal inputs are correlated");
        }
        double[][] copy = new double[correlations.length][];
        for (int i = 0; i < copy.length; i++) {
            copy[i] = correlations[i].clone();
        }
        copy[first][second] = correlation;
        copy[second][first] = correlation;
        return new Inputs(each, copy);
    }

    public int size() {
        return each.size();
    }

    public Input get(int index) {
        return each.get(index);
    }

    public double correlation(int first, int second) {
        return correlations[first][second];
    }

    /** Whether any two are correlated. */
    public boolean correlated() {
        for (int i = 0; i < each.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (correlations[i][j] != 0) {
                    return true;
                }
            }
        }
        return false;
    }

    double[] values() {
        return each.stream().mapToDouble(Input::value).toArray();
    }

    double[][] correlations() {
        return correlations;
    }
}
