package comparand.calibration;

import comparand.stat.Derived;
import comparand.stat.Holm;
import comparand.stat.Interval;
import comparand.stat.MeanDifference;
import comparand.stat.Moments;
import comparand.stat.OneSidedTolerance;
import comparand.stat.RatioOfMeans;
import comparand.stat.ToleranceFactor;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;

/** Intervals and differences of means of independent values. */
final class MeanCells {

    private static final int RUNS = 20_000;
    private static final String COVERS = "covers the truth";

    private MeanCells() {}

    static List<Cell> cells() {
        var cells = new ArrayList<Cell>();
        for (int n : new int[] {3, 5, 10, 30}) {
            cells.add(new Cell("One mean", "t interval, n = " + n, COVERS, Claim.EXACT_95, RUNS, draw -> {
                var m = Moments.of(draw.normals(n, 7, 2));
                return Derived.of(m.estimate().interval(0.95).contains(7));
            }));
            cells.add(new Cell("One mean", "prediction of one more, n = " + n, COVERS, Claim.EXACT_95, RUNS, draw -> {
                var m = Moments.of(draw.normals(n, 7, 2));
                return Derived.of(m.predictionForOneMore(0.95).contains(draw.normal(7, 2)));
            }));
        }
        cells.add(new Cell(
                "One mean", "prediction of the mean of 6 more, n = 8", COVERS, Claim.EXACT_95, RUNS, draw -> {
                    var m = Moments.of(draw.normals(8, 7, 2));
                    double further = Moments.of(draw.normals(6, 7, 2)).mean();
                    return Derived.of(m.predictionForMeanOf(6, 0.95).contains(further));
                }));
        int[][] sizes = {{4, 4}, {5, 20}, {20, 5}, {10, 10}, {12, 40}};
        for (int[] n : sizes) {
            for (double ratio : new double[] {1, 3}) {
                String setting = "n = %d and %d, SDs 1 and %.0f".formatted(n[0], n[1], ratio);
                cells.add(new Cell("Two means", setting, COVERS, Claim.AT_LEAST_93, RUNS, draw -> {
                    var d = MeanDifference.of(
                            Moments.of(draw.normals(n[0], 3, 1)).estimate(),
                            Moments.of(draw.normals(n[1], 1, ratio)).estimate());
                    return Derived.of(d.interval(0.95).contains(2));
                }));
            }
        }
        for (double a : new double[] {0.1, 0.5, 1}) {
            cells.add(new Cell(
                    "Rounded figure",
                    "n = 9, SD 1.5 (SE 0.5), figure rounded to within ± " + a,
                    "covers the difference from the unrounded figure",
                    Claim.NEAR_95,
                    RUNS,
                    draw -> {
                        var local = Moments.of(draw.normals(9, 10, 1.5)).estimate();
                        double figure = draw.uniform(8, 12);
                        double printed = 2 * a * Math.rint(figure / (2 * a));
                        var d = MeanDifference.from(local.widenedBy(a), printed);
                        return Derived.of(d.interval(0.95).contains(10 - figure));
                    }));
        }
        for (double spread : new double[] {0.15, 0.4}) {
            for (int n : new int[] {6, 20}) {
                String setting = "ratio of means, n = %d each, SD/mean %s".formatted(n, spread);
                cells.add(new Cell("Ratio of means", setting + ", logarithms", COVERS, Claim.NEAR_95, RUNS, draw -> {
                    var a = Moments.of(draw.normals(n, 10, 10 * spread)).estimate();
                    var b = Moments.of(draw.normals(n, 8, 8 * spread)).estimate();
                    return RatioOfMeans.of(a, b).map(r -> r.interval(0.95).contains(1.25));
                }));
                cells.add(new Cell("Ratio of means", setting + ", Fieller", COVERS, Claim.NEAR_95, RUNS, draw -> {
                    var a = Moments.of(draw.normals(n, 10, 10 * spread)).estimate();
                    var b = Moments.of(draw.normals(n, 8, 8 * spread)).estimate();
                    return RatioOfMeans.fieller(a, b, 0.95).map(i -> i.contains(1.25));
                }));
            }
        }
        cells.addAll(tolerance());
        cells.add(new Cell(
                "Several comparisons",
                "Holm over 5 metrics, n = 8 against 20",
                "any false difference",
                Claim.AT_MOST_5,
                RUNS,
                draw -> {
                    var p = IntStream.range(0, 5)
                            .mapToObj(i -> MeanDifference.of(
                                            Moments.of(draw.normals(8, 0, 1)).estimate(),
                                            Moments.of(draw.normals(20, 0, 1)).estimate())
                                    .p())
                            .toList();
                    return Derived.of(Holm.adjust(p).stream().anyMatch(x -> x < 0.05));
                }));
        return cells;
    }

    private static List<Cell> tolerance() {
        var cells = new ArrayList<Cell>();
        var normal = NormalDistribution.of(0, 1);
        for (int n : new int[] {4, 6, 10, 15, 40}) {
            for (var method : ToleranceFactor.values()) {
                double k = method.of(n, 0.9, 0.95);
                cells.add(new Cell(
                        "Tolerance",
                        "two-sided, " + method + ", n = " + n,
                        "holds 90 % of the population",
                        method == ToleranceFactor.EXACT ? Claim.EXACT_95 : Claim.NEAR_95,
                        RUNS,
                        draw -> {
                            var m = Moments.of(draw.normals(n, 0, 1));
                            var i = Interval.around(m.mean(), k * m.sd());
                            return Derived.of(normal.probability(i.low(), i.high()) >= 0.9);
                        }));
            }
            double k = OneSidedTolerance.factor(n, 0.9, 0.95);
            cells.add(new Cell(
                    "Tolerance",
                    "one-sided, noncentral t, n = " + n,
                    "90 % of the population exceed it",
                    Claim.EXACT_95,
                    RUNS,
                    draw -> {
                        var m = Moments.of(draw.normals(n, 0, 1));
                        return Derived.of(normal.survivalProbability(m.mean() - k * m.sd()) >= 0.9);
                    }));
        }
        return cells;
    }
}
