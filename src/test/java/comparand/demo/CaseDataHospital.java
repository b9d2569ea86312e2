package comparand.demo;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The three invented hospitals: what their monitors show, and how they differ. Pressures are held in mmHg whatever the
 * hospital writes; a step is the smallest difference that its monitor shows.
 */
enum CaseDataHospital {
    NORRISGATE("N", 1, 1, 752, 0.000, 0, 10.0),
    ST_ALDWYN("A", 0.1 / CaseDataHospital.KPA_PER_MMHG, 0.1 / CaseDataHospital.KPA_PER_MMHG, 757, 0.008, 1.5, 12.0),
    LAKE_FERRAN("F", 1, 0.1 / CaseDataHospital.KPA_PER_MMHG, 726, -0.008, -1.0, 14.0);

    static final double KPA_PER_MMHG = 0.133322;

    final String letter;
    final double pressureStep;
    final double barometerStep;
    final double barometer;
    final double haematocritShift;
    final double pco2Shift;
    final double waterFlow;

    CaseDataHospital(
            String letter,
            double pressureStep,
            double barometerStep,
            double barometer,
            double haematocritShift,
            double pco2Shift,
            double waterFlow) {
        this.letter = letter;
        this.pressureStep = pressureStep;
        this.barometerStep = barometerStep;
        this.barometer = barometer;
        this.haematocritShift = haematocritShift;
        this.pco2Shift = pco2Shift;
        this.waterFlow = waterFlow;
    }

    /** A pressure as the monitor of this hospital shows it, in mmHg. */
    double shown(double mmHg) {
        return pressureStep * StrictMath.round(mmHg / pressureStep);
    }

    double shownBarometer(double mmHg) {
        return barometerStep * StrictMath.round(mmHg / barometerStep);
    }

    static double round(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .doubleValue();
    }

    /** A number with a fixed count of decimals and a point. */
    static String text(double value, int decimals) {
        // nine decimals first: what was rounded to a step of 0.1 kPa lies a hair beside it in mmHg
        return BigDecimal.valueOf(value)
                .setScale(9, RoundingMode.HALF_EVEN)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
