package comparand.metric;

/**
 * Gas volumes from body temperature, saturated with water (BTPS), to standard temperature and pressure, dry (STPD):
 * {@code V_STPD = V_BTPS · (PB - 47.067)/760 · 273.15/310.15}, PB in mmHg.
 *
 * <p>MacIntyre et al., Eur Respir J 2005;26:720-735, table 5 (from memory); vapour pressure at 37 °C from handbook tables.
 */
public final class GasVolume {

    public static final String FORMULA = "V_STPD = V_BTPS · (PB - 47.067)/760 · 273.15/310.15";

    /** The pressure a volume is taken to have been read at, in mmHg, where somebody only asks what if. */
    public static final double USUAL_PRESSURE = 760;

    private static final double VAPOUR = 47.067;

    private GasVolume() {}

    /**
     * The factor.
     *
     * @param barometric pressure in mmHg
     */
    public static double fromBtpsToStpd(double barometric) {
        return (barometric - VAPOUR) / 760 * 273.15 / 310.15;
    }
}
