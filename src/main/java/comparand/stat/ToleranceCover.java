package comparand.stat;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * How sure one may be that {@code mean ± k s} of n normal values covers a share of the population. The half-widths r(z) that
 * cover the share around a mean z off the true one do not depend on k and are found once.
 */
final class ToleranceCover {

    private static final int PANELS = 6;
    private static final int POINTS = 20;

    /** Shared, since a factory works out the rules of all orders up to one that it is first asked for. */
    private static final GaussIntegratorFactory RULES = new GaussIntegratorFactory();

    private final int df;
    private final double[] weights = new double[PANELS * POINTS];
    private final double[] squaredReach = new double[PANELS * POINTS];

    ToleranceCover(int n, double share) {
        df = n - 1;
        double root = Math.sqrt(n);
        double width = 9 / root / PANELS;
        for (int panel = 0; panel < PANELS; panel++) {
            var rule = RULES.legendre(POINTS, panel * width, (panel + 1) * width);
            for (int i = 0; i < POINTS; i++) {
                double z = rule.getPoint(i);
                int at = panel * POINTS + i;
                weights[at] = 2 * root * rule.getWeight(i) * Quantiles.normalDensity(z * root);
                squaredReach[at] = Math.pow(reach(z, share), 2);
            }
        }
    }

    double confidence(double k) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * Quantiles.chiSquaredTail(df * squaredReach[i] / (k * k), df);
        }
        return sum;
    }

    private static double reach(double z, double share) {
        // the reach is z plus between the one-sided and the two-sided quantile
        double least = Math.max(0, z + Quantiles.z(share) - 1e-6);
        double most = z + Quantiles.z((1 + share) / 2) + 1e-6;
        return Roots.between(r -> Quantiles.normal(z + r) - Quantiles.normal(z - r) - share, least, most);
    }
}
