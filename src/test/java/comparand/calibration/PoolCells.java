package comparand.calibration;

import comparand.stat.BetweenVariance;
import comparand.stat.Derived;
import comparand.stat.MeanEstimate;
import comparand.stat.Moments;
import comparand.stat.Pool;
import comparand.stat.QProfile;
import comparand.stat.RandomEffects;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;

/** Sources of 8 to 40 cases with an SD of 2 within, whose true means lie around 20. */
final class PoolCells {

    private static final int RUNS = 20_000;

    private PoolCells() {}

    static List<Cell> cells() {
        var cells = new ArrayList<Cell>();
        for (int k : new int[] {3, 5, 10}) {
            for (double tau : new double[] {0, 0.5, 2}) {
                String setting = ", k = %d, SD between %s".formatted(k, tau);
                cells.add(cell(
                        "mean, modified Hartung-Knapp" + setting,
                        "covers the mean of all sources",
                        Claim.AT_LEAST_93,
                        k,
                        tau,
                        (draw, pool) -> pool.mean().interval(0.95).contains(20)));
                cells.add(cell(
                        "mean, Hartung-Knapp" + setting,
                        "covers the mean of all sources",
                        Claim.NONE,
                        k,
                        tau,
                        (draw, pool) ->
                                pool.random().hartungKnapp().interval(0.95).contains(20)));
                cells.add(cell(
                        "mean, normal after DerSimonian-Laird" + setting,
                        "covers the mean of all sources",
                        Claim.NONE,
                        k,
                        tau,
                        (draw, pool) -> RandomEffects.of(pool.effects(), BetweenVariance.DERSIMONIAN_LAIRD)
                                .normal()
                                .interval(0.95)
                                .contains(20)));
                cells.add(cell(
                        "further source" + setting,
                        "holds its true mean",
                        Claim.AT_LEAST_93,
                        k,
                        tau,
                        (draw, pool) -> pool.furtherSource(0.95).contains(draw.normal(20, tau))));
                cells.add(cell(
                        "further observed mean of 14" + setting,
                        "holds the local mean",
                        Claim.AT_LEAST_93,
                        k,
                        tau,
                        (draw, pool) -> {
                            var local = Moments.of(draw.normals(14, draw.normal(20, tau), 2))
                                    .estimate();
                            return pool.furtherObservedMean(local, 0.95).contains(local.mean());
                        }));
                cells.add(cell(
                        "variance between, Q-profile" + setting,
                        "covers it",
                        Claim.AT_LEAST_93,
                        k,
                        tau,
                        (draw, pool) -> QProfile.of(pool.effects(), 0.95).contains(tau * tau)));
            }
        }
        return cells;
    }

    private static Cell cell(
            String setting, String event, Claim claim, int k, double tau, BiFunction<Draw, Pool.Several, Boolean> hit) {
        return new Cell("Sources pooled", setting, event, claim, RUNS, draw -> {
            var sources = new ArrayList<MeanEstimate>();
            for (int i = 0; i < k; i++) {
                sources.add(Moments.of(draw.normals(draw.whole(8, 40), draw.normal(20, tau), 2))
                        .estimate());
            }
            return Derived.of(hit.apply(draw, (Pool.Several) Pool.of(sources).orElseThrow()));
        });
    }
}
