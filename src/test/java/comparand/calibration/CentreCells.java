package comparand.calibration;

import comparand.stat.Derived;
import comparand.stat.LocalMean;
import comparand.stat.Moments;
import comparand.stat.OneWay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** Means of cases in centres: the SD within a centre is 1. */
final class CentreCells {

    static final int RUNS = 20_000;
    static final int[] CENTRES = {3, 4, 6};
    static final double[] BETWEEN = {0, 0.25, 0.5, 0.75, 1};
    private static final String COVERS = "covers the mean of all centres";

    private CentreCells() {}

    static List<Cell> cells() {
        var cells = new ArrayList<Cell>();
        for (int j : CENTRES) {
            for (double tau : BETWEEN) {
                for (boolean balanced : new boolean[] {true, false}) {
                    String setting = setting(j, tau, balanced);
                    cells.add(cell(
                            setting + ", with the floor",
                            Claim.AT_LEAST_93,
                            balanced,
                            j,
                            tau,
                            c -> LocalMean.of(c, 0.95).map(m -> m.interval(0.95).contains(5))));
                    if (!balanced) {
                        cells.add(cell(
                                setting + ", Hartung-Knapp alone",
                                Claim.NONE,
                                false,
                                j,
                                tau,
                                c -> LocalMean.of(c, 0.95)
                                        .map(m -> m.spread()
                                                .orElseThrow()
                                                .twoStage()
                                                .hartungKnapp()
                                                .interval(0.95)
                                                .contains(5))));
                        cells.add(cell(
                                setting + ", centres ignored",
                                Claim.NONE,
                                false,
                                j,
                                tau,
                                c -> Derived.of(Moments.of(c.stream()
                                                .flatMapToDouble(Arrays::stream)
                                                .toArray())
                                        .estimate()
                                        .interval(0.95)
                                        .contains(5))));
                    }
                }
            }
        }
        for (double tau : new double[] {0, 0.5, 1}) {
            cells.add(new Cell(
                    "Centres",
                    "J = 2, SD between " + tau + ", 3-12 cases",
                    "covers the mean of these two centres",
                    Claim.NEAR_95,
                    RUNS,
                    draw -> {
                        double a = draw.normal(5, tau);
                        double b = draw.normal(5, tau);
                        double[] first = draw.normals(draw.whole(3, 12), a, 1);
                        double[] second = draw.normals(draw.whole(3, 12), b, 1);
                        double truth = (first.length * a + second.length * b) / (first.length + second.length);
                        return LocalMean.of(List.of(first, second), 0.95)
                                .map(m -> m.interval(0.95).contains(truth));
                    }));
        }
        for (double icc : new double[] {0, 0.3, 0.7}) {
            cells.add(new Cell(
                    "Centres",
                    "intraclass correlation " + icc + ", 6 centres of 5",
                    "its interval covers it",
                    Claim.EXACT_95,
                    RUNS,
                    draw -> {
                        double tau = Math.sqrt(icc / (1 - icc));
                        var a = OneWay.of(centres(draw, 6, tau, true));
                        return Derived.of(a.iccInterval(0.95).contains(icc));
                    }));
        }
        return cells;
    }

    private static String setting(int centres, double between, boolean balanced) {
        return "J = %d, SD between %s, %s".formatted(centres, between, balanced ? "5 cases each" : "3-12 cases");
    }

    private static Cell cell(
            String setting,
            Claim claim,
            boolean balanced,
            int j,
            double tau,
            Function<List<double[]>, Derived<Boolean>> hit) {
        return new Cell("Centres", setting, COVERS, claim, RUNS, draw -> hit.apply(centres(draw, j, tau, balanced)));
    }

    /** Values around 5 in centres that differ with an SD. */
    static List<double[]> centres(Draw draw, int centres, double between, boolean balanced) {
        var values = new ArrayList<double[]>();
        for (int i = 0; i < centres; i++) {
            values.add(draw.normals(balanced ? 5 : draw.whole(3, 12), draw.normal(5, between), 1));
        }
        return values;
    }
}
