package comparand.simulation;

/**
 * The true pressure drop of a simulated device: {@code ΔP = (a + f) (μ/μ₀) Q + b Q²}, mmHg, with Q in L/min and μ₀ of blood at
 * 37 °C and 12 g/dL. Only the linear part feels the viscosity.
 *
 * <p>Viscosity of blood: {@code exp(-5.64 + 1800/(T + 273)) · exp(2.31 · Hct)} mPa·s, Mockros and Leonard, Trans ASAIO
 * 1985;31:628-633 (from memory), with a haematocrit of three times the haemoglobin (common practice). Water at 37 °C:
 * 0.69 mPa·s (from memory).
 *
 * @param laminar a, mmHg·min/L
 * @param inertial b, mmHg·min²/L²
 * @param filter f, mmHg·min/L, counted only across the filter
 */
record PressureLaw(double laminar, double inertial, double filter) {

    private static final double WATER = 0.69;
    private static final double REFERENCE = viscosity(Setting.blood(0, 12, 37));

    double drop(Setting at) {
        double linear = (laminar + (at.filter() ? filter : 0)) * viscosity(at) / REFERENCE;
        return linear * at.flow() + inertial * at.flow() * at.flow();
    }

    /** mPa·s. */
    static double viscosity(Setting at) {
        if (at.water()) {
            return WATER;
        }
        double plasma = Math.exp(-5.64 + 1800 / (at.temperature() + 273));
        return plasma * Math.exp(2.31 * 3 * at.haemoglobin() / 100);
    }
}
