package comparand.calibration;

import comparand.stat.Derived;
import comparand.stat.Interval;
import comparand.stat.LocalMean;
import comparand.stat.MeanDifference;
import comparand.stat.MeanEstimate;
import comparand.stat.Moments;
import comparand.stat.TwoOneSided;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** How often a verdict is wrong: a direction where there is no difference, and a margin kept where it is just reached. */
final class VerdictCells {

    private static final int RUNS = 20_000;
    private static final double MARGIN = 1.5;

    private VerdictCells() {}

    /** A local mean around 5 with an SD of 1 within. */
    private record Local(String words, Function<Draw, Derived<MeanEstimate>> mean) {}

    static List<Cell> cells() {
        var locals = new ArrayList<Local>();
        for (int n : new int[] {3, 4, 5, 8, 20}) {
            locals.add(new Local(
                    "n = " + n,
                    draw -> Derived.of(Moments.of(draw.normals(n, 5, 1)).estimate())));
        }
        for (int j : CentreCells.CENTRES) {
            for (double tau : new double[] {0, 0.5, 1}) {
                locals.add(new Local(
                        "%d centres, SD between %s".formatted(j, tau),
                        draw -> LocalMean.of(CentreCells.centres(draw, j, tau, false), 0.95)
                                .map(LocalMean::estimate)));
            }
        }
        var cells = new ArrayList<Cell>();
        for (var local : locals) {
            for (boolean spread : new boolean[] {false, true}) {
                String against = local.words + (spread ? ", against mean of 24" : ", against a fixed figure");
                cells.add(new Cell(
                        "Verdicts",
                        against,
                        "false higher or lower",
                        Claim.AT_MOST_5,
                        RUNS,
                        draw -> difference(draw, local, spread, 0)
                                .map(d -> !d.interval(0.95).contains(0))));
                cells.add(new Cell(
                        "Verdicts",
                        against,
                        "false no difference as large as m, two one-sided tests",
                        Claim.AT_MOST_5,
                        RUNS,
                        draw -> difference(draw, local, spread, MARGIN)
                                .map(d -> TwoOneSided.of(d, new Interval(-MARGIN, MARGIN), 0.05)
                                        .within())));
                cells.add(new Cell(
                        "Verdicts",
                        against,
                        "false no difference as large as m, 95 % interval",
                        Claim.AT_MOST_5,
                        RUNS,
                        draw -> difference(draw, local, spread, MARGIN)
                                .map(d -> d.interval(0.95).insideOf(-MARGIN, MARGIN))));
            }
            String against = local.words + ", against mean of 24";
            cells.add(new Cell(
                    "Verdicts",
                    against,
                    "false higher or lower, Welch",
                    Claim.NONE,
                    RUNS,
                    draw -> local.mean
                            .apply(draw)
                            .map(m -> !MeanDifference.welch(m, published(draw, 0))
                                    .interval(0.95)
                                    .contains(0))));
            cells.add(new Cell(
                    "Verdicts",
                    against,
                    "false no difference as large as m, Welch, two one-sided tests",
                    Claim.NONE,
                    RUNS,
                    draw -> local.mean
                            .apply(draw)
                            .map(m -> MeanDifference.welch(m, published(draw, MARGIN))
                                    .interval(0.9)
                                    .insideOf(-MARGIN, MARGIN))));
        }
        return cells;
    }

    private static Derived<MeanDifference> difference(Draw draw, Local local, boolean spread, double truth) {
        return local.mean
                .apply(draw)
                .map(m -> spread ? MeanDifference.of(m, published(draw, truth)) : MeanDifference.from(m, 5 - truth));
    }

    /** The mean of 24 cases with an SD of 1.4, lower than the local one by the true difference. */
    private static MeanEstimate published(Draw draw, double truth) {
        return Moments.of(draw.normals(24, 5 - truth, 1.4)).estimate();
    }
}
