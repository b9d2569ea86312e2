package comparand.calibration;

import comparand.stat.BcaBootstrap;
import comparand.stat.Derived;
import comparand.stat.InversePrediction;
import comparand.stat.LineThroughOrigin;
import comparand.stat.PairedReduction;
import comparand.stat.StraightLine;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Reductions within pairs, and lines. */
final class PairCells {

    private static final int RUNS = 20_000;
    private static final int BOOTSTRAP_RUNS = 4_000;
    private static final int RESAMPLES = 999;
    private static final String COVERS = "covers the truth";
    private static final double[] X = {1, 1, 2, 3, 4, 4, 5, 6};

    private PairCells() {}

    static List<Cell> cells() {
        var cells = new ArrayList<Cell>();
        for (int n : new int[] {4, 6, 12, 20, 30}) {
            String setting = ", n = " + n;
            cells.add(new Cell(
                    "Pairs",
                    "geometric reduction" + setting,
                    COVERS,
                    Claim.EXACT_95,
                    RUNS,
                    draw -> pairs(draw, n).geometric(0.95).map(r -> r.interval().contains(1 - Math.exp(-0.9)))));
            // post/pre is lognormal(-0.9, 0.25): its mean is exp(-0.9 + 0.25²/2)
            double mean = 1 - Math.exp(-0.9 + 0.25 * 0.25 / 2);
            cells.add(new Cell(
                    "Pairs",
                    "mean of each reduction, lognormal ratios" + setting,
                    COVERS,
                    Claim.NEAR_95,
                    RUNS,
                    draw -> Derived.of(
                            pairs(draw, n).meanOfEach(0.95).interval().contains(mean))));
            cells.add(new Cell(
                    "Pairs",
                    "reduction of sums" + setting,
                    COVERS,
                    Claim.NEAR_95,
                    RUNS,
                    draw -> pairs(draw, n).ofSums(0.95).map(r -> r.interval().contains(mean))));
            cells.add(new Cell(
                    "Pairs",
                    "reduction of sums, Fieller always" + setting,
                    COVERS,
                    Claim.NONE,
                    RUNS,
                    draw -> pairs(draw, n).fieller(0.95).map(i -> i.contains(1 - mean))));
            if (n >= BcaBootstrap.FEWEST) {
                cells.add(new Cell(
                        "Pairs",
                        "reduction of sums, BCa bootstrap of " + RESAMPLES + setting,
                        COVERS,
                        Claim.NEAR_95,
                        BOOTSTRAP_RUNS,
                        draw -> bootstrap(draw, n, 1 - mean)));
            }
        }
        for (double slope : new double[] {0.3, 2}) {
            String setting = ", 8 points, slope %s, SD 1".formatted(slope);
            cells.add(new Cell(
                    "Lines",
                    "line at 4.5" + setting,
                    COVERS,
                    Claim.EXACT_95,
                    RUNS,
                    draw -> line(draw, slope)
                            .supportedAt(4.5)
                            .map(e -> e.interval(0.95).contains(3 + 4.5 * slope))));
            cells.add(new Cell(
                    "Lines",
                    "prediction at 4.5" + setting,
                    COVERS,
                    Claim.EXACT_95,
                    RUNS,
                    draw -> Derived.of(
                            line(draw, slope).prediction(4.5, 1, 0.95).contains(draw.normal(3 + 4.5 * slope, 1)))));
            cells.add(new Cell(
                    "Lines",
                    "place where the line reaches its value at 4.5" + setting,
                    COVERS,
                    slope > 1 ? Claim.EXACT_95 : Claim.NONE,
                    RUNS,
                    draw -> InversePrediction.ofFixed(line(draw, slope), 3 + 4.5 * slope, 0.95)
                            .map(i -> i.contains(4.5))));
            cells.add(new Cell(
                    "Lines",
                    "place of a new reading taken at 4.5" + setting,
                    COVERS,
                    slope > 1 ? Claim.EXACT_95 : Claim.NONE,
                    RUNS,
                    draw -> InversePrediction.ofMean(line(draw, slope), draw.normal(3 + 4.5 * slope, 1), 1, 0.95)
                            .map(i -> i.contains(4.5))));
        }
        cells.add(new Cell(
                "Lines", "through the origin at 4.5, 8 points, slope 2, SD 1", COVERS, Claim.EXACT_95, RUNS, draw -> {
                    double[] y =
                            Arrays.stream(X).map(x -> draw.normal(2 * x, 1)).toArray();
                    return Derived.of(LineThroughOrigin.through(X, y)
                            .at(4.5)
                            .interval(0.95)
                            .contains(9));
                }));
        return cells;
    }

    private static PairedReduction pairs(Draw draw, int n) {
        double[] pre = new double[n];
        double[] post = new double[n];
        fill(draw, pre, post);
        return new PairedReduction(pre, post);
    }

    private static void fill(Draw draw, double[] pre, double[] post) {
        for (int i = 0; i < pre.length; i++) {
            pre[i] = Math.exp(draw.normal(4, 0.3));
            post[i] = pre[i] * Math.exp(draw.normal(-0.9, 0.25));
        }
    }

    private static Derived<Boolean> bootstrap(Draw draw, int n, double truth) {
        double[] pre = new double[n];
        double[] post = new double[n];
        fill(draw, pre, post);
        ToDoubleFunction<int[]> ratio = cases -> {
            double a = 0;
            double b = 0;
            for (int c : cases) {
                a += post[c];
                b += pre[c];
            }
            return a / b;
        };
        return BcaBootstrap.of(n, ratio, RESAMPLES, draw.seed(), 0.95).map(i -> i.contains(truth));
    }

    private static StraightLine line(Draw draw, double slope) {
        return StraightLine.through(
                X, Arrays.stream(X).map(x -> draw.normal(3 + slope * x, 1)).toArray());
    }
}
