package comparand.stat;

/**
 * The least-squares curve {@code y = a Q + b Q²} with {@code a, b >= 0}: a pressure drop is zero at no flow, and neither the
 * viscous nor the inertial part is negative.
 *
 * <p>Least squares under two bounds: the free fit where both coefficients come out at 0 or above, else the better of the two
 * fits with one of them 0 (Lawson and Hanson, Solving Least Squares Problems, 1974, ch. 23; from memory). The standard error
 * is that of the fit with the coefficients that were kept.
 *
 * @param parameters how many coefficients were kept free, 1 or 2
 * @param residual sum of squares of y about the curve
 */
public record FlowCurve(
        double a, double b, int n, int parameters, double residual, double qq, double qq2, double q2q2) {

    /**
     * Fits at least 3 points.
     *
     * @param flow above 0, at 2 or more different places
     * @throws IllegalArgumentException for fewer points or places
     */
    public static FlowCurve through(double[] flow, double[] y) {
        if (flow.length != y.length || flow.length < 3) {
            throw new IllegalArgumentException("not points: %d flows, %d y".formatted(flow.length, y.length));
        }
        double qq = 0;
        double qq2 = 0;
        double q2q2 = 0;
        double qy = 0;
        for (int i = 0; i < flow.length; i++) {
            if (!(flow[i] > 0)) {
                throw new IllegalArgumentException("a flow is above zero, got " + flow[i]);
            }
            double square = flow[i] * flow[i];
            qq += square;
            qq2 += square * flow[i];
            q2q2 += square * square;
            qy += flow[i] * y[i];
        }
        // Q² is set at right angles to Q first: the two are nearly parallel, and the normal equations lose digits
        double shared = qq2 / qq;
        double restSquares = 0;
        double restY = 0;
        double q2y = 0;
        for (int i = 0; i < flow.length; i++) {
            double rest = flow[i] * flow[i] - shared * flow[i];
            restSquares += rest * rest;
            restY += rest * (y[i] - qy / qq * flow[i]);
            q2y += flow[i] * flow[i] * y[i];
        }
        if (!(restSquares > 1e-20 * q2q2)) {
            throw new IllegalArgumentException("all points lie at one flow");
        }
        double b = restY / restSquares;
        double a = qy / qq - b * shared;
        if (a >= 0 && b >= 0) {
            return new FlowCurve(a, b, flow.length, 2, residual(flow, y, a, b), qq, qq2, q2q2);
        }
        double onlyA = Math.max(0, qy / qq);
        double onlyB = Math.max(0, q2y / q2q2);
        double withA = residual(flow, y, onlyA, 0);
        double withB = residual(flow, y, 0, onlyB);
        return withA <= withB
                ? new FlowCurve(onlyA, 0, flow.length, 1, withA, qq, qq2, q2q2)
                : new FlowCurve(0, onlyB, flow.length, 1, withB, qq, qq2, q2q2);
    }

    private static double residual(double[] flow, double[] y, double a, double b) {
        double sum = 0;
        for (int i = 0; i < flow.length; i++) {
            sum += Math.pow(y[i] - (a + b * flow[i]) * flow[i], 2);
        }
        return sum;
    }

    /** The SD of y about the curve. */
    public double residualSd() {
        return Math.sqrt(residual / (n - parameters));
    }

    /** The curve at a flow. */
    public MeanEstimate at(double flow) {
        return new MeanEstimate((a + b * flow) * flow, residualSd() * Math.sqrt(leverage(flow)), n - parameters);
    }

    /** {@code xᵀ(XᵀX)⁻¹x} over the coefficients that were kept. */
    private double leverage(double flow) {
        double square = flow * flow;
        if (parameters == 1) {
            return a > 0 || b == 0 ? square / qq : square * square / q2q2;
        }
        double rest = square - qq2 / qq * flow;
        return square / qq + rest * rest / (q2q2 - qq2 * qq2 / qq);
    }
}
