package comparand.metric;

/** Properties of blood and water that formulas take as fixed. All are cited from memory and printed in the formulas. */
final class Blood {

    /** kg/m³. */
    static final double DENSITY = 1055;

    /** J/(kg·K). */
    static final double SPECIFIC_HEAT = 3600;

    /** Of water about 40 °C, kg/m³. */
    static final double WATER_DENSITY = 992;

    /** Of water about 40 °C, J/(kg·K). */
    static final double WATER_SPECIFIC_HEAT = 4179;

    /** Standard gravity, m/s², exact. */
    static final double GRAVITY = 9.80665;

    /** Pa per mmHg as UCUM defines it; the conventional millimetre of mercury is 3 parts in a million more. */
    static final double MMHG = 133.322;

    private Blood() {}
}
