package comparand.stat;

/** The uncertainty of a number that was rounded when printed, or read from a figure. */
public final class ReadingUncertainty {

    private ReadingUncertainty() {}

    /** {@code u = a/√3} for a value that lies anywhere within {@code ± a}; JCGM 100:2008 (GUM) 4.3.7. */
    public static double rectangular(double halfWidth) {
        if (!(halfWidth >= 0)) {
            throw new IllegalArgumentException("a half-width is not negative, got " + halfWidth);
        }
        return halfWidth / Math.sqrt(3);
    }

    /** Half a unit of the last printed digit; {@code decimals} may be negative, -1 for tens. */
    public static double halfWidthOfPrinted(int decimals) {
        return 0.5 * Math.pow(10, -decimals);
    }

    /**
     * The mean of two readers: {@code u² = a²/3 + (difference/2)²}.
     *
     * @param halfWidth half the smallest step that the reader can resolve
     */
    public static AxisCalibration.Reading ofTwoReaders(double first, double second, double halfWidth) {
        return new AxisCalibration.Reading(
                (first + second) / 2, rectangular(halfWidth), 0, 0, Math.abs(first - second) / 2);
    }
}
