package comparand.metric;

/**
 * The oxygen dissociation curve of human adult blood: Severinghaus (J Appl Physiol 1979;46:599-602), its exact inverse by
 * Ellis (J Appl Physiol 1989;67:902), and the curve of Kelman (J Appl Physiol 1966;21:1375-1376). Pressures in mmHg of the
 * sample at 37 °C, saturations as fractions.
 */
final class OxygenDissociation {

    private OxygenDissociation() {}

    /** Equation 1, at pH 7.4. */
    static double saturation(double po2) {
        return po2 <= 0 ? 0 : 1 / (23400 / (po2 * po2 * po2 + 150 * po2) + 1);
    }

    /** The root of the cubic of equation 1: its exact inverse, in a form that keeps its digits at low saturation. */
    static double pressure(double saturation) {
        double a = 11700 * saturation / (1 - saturation);
        double root = Math.cbrt(a + Math.sqrt(125000 + a * a));
        // the product of Ellis' two cube roots is the cube root of 125000, so the second follows from the first
        return root - 50 / root;
    }

    /** Equation 2, the approximate inverse. */
    static double approximatePressure(double saturation) {
        return Math.exp(0.385 * Math.log(saturation / (1 - saturation))
                + 3.32
                - 1 / (72 * saturation)
                - 0.17 * Math.pow(saturation, 6));
    }

    /** Equation 3: change of ln P per kelvin at constant content. */
    static double temperatureCoefficient(double po2) {
        return 0.058 / (0.243 * Math.pow(po2 / 100, 3.88) + 1) + 0.013;
    }

    /** Equation 4: change of ln P per unit of pH at constant saturation. */
    static double bohrCoefficient(double po2) {
        return Math.pow(po2 / 26.6, 0.184) - 2.2;
    }

    /** The pressure that at pH 7.4 gives the saturation that {@code po2} gives at {@code ph}. */
    static double virtualPressure(double po2, double ph) {
        return po2 * Math.exp(-bohrCoefficient(po2) * (ph - 7.4));
    }

    /** Kelman's standard curve, at pH 7.4, 37 °C and 40 mmHg of carbon dioxide. */
    static double kelmanSaturation(double po2) {
        double p2 = po2 * po2;
        double p3 = p2 * po2;
        double p4 = p3 * po2;
        return (-8532.2289 * po2 + 2121.4010 * p2 - 67.073989 * p3 + p4)
                / (935960.87 - 31346.258 * po2 + 2396.1674 * p2 - 67.104406 * p3 + p4);
    }

    /** The pressure at which Kelman's standard curve is read. */
    static double kelmanPressure(double po2, double celsius, double ph, double pco2) {
        return po2 * Math.pow(10, 0.024 * (37 - celsius) + 0.40 * (ph - 7.40) + 0.06 * Math.log10(40 / pco2));
    }
}
