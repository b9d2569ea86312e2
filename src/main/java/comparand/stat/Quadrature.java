package comparand.stat;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/** Gauss-Legendre integration over equal panels of 20 points: for smooth functions on a finite stretch. */
final class Quadrature {

    private static final int POINTS = 20;
    private static final GaussIntegratorFactory RULES = new GaussIntegratorFactory();

    private Quadrature() {}

    static double integrate(DoubleUnaryOperator function, double from, double to, int panels) {
        double width = (to - from) / panels;
        double sum = 0;
        for (int i = 0; i < panels; i++) {
            double start = from + i * width;
            sum += RULES.legendre(POINTS, start, start + width).integrate(function::applyAsDouble);
        }
        return sum;
    }
}
