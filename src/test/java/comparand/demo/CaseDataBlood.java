package comparand.demo;

import java.util.function.DoubleUnaryOperator;

/**
 * Gases in human blood at 37 °C, as the generator of the case data needs them. Pressures in mmHg, contents in mL/dL,
 * haemoglobin in g/dL, saturations as fractions. {@link StrictMath} throughout: the same numbers on every machine.
 */
final class CaseDataBlood {

    /** Oxygen that a gram of haemoglobin binds, mL. */
    static final double HUFNER = 1.34;

    /** Oxygen dissolved in blood, mL/dL/mmHg. */
    static final double SOLUBILITY = 0.0031;

    private CaseDataBlood() {}

    /**
     * Severinghaus, J Appl Physiol 1979;46:599-602: equation 1, at the oxygen pressure that this blood would have at pH 7.4
     * (its equation 4, for the effect of Bohr).
     */
    static double saturation(double po2, double ph) {
        double bohr = StrictMath.pow(po2 / 26.6, 0.184) - 2.2;
        double p = po2 * StrictMath.exp(-bohr * (ph - 7.4));
        return 1 / (23400 / (p * p * p + 150 * p) + 1);
    }

    static double oxygenContent(double haemoglobin, double saturation, double po2) {
        return HUFNER * haemoglobin * saturation + SOLUBILITY * po2;
    }

    /** The oxygen pressure at which blood of this pH holds the given content. */
    static double oxygenPressure(double content, double haemoglobin, double ph) {
        return solved(1, 700, p -> oxygenContent(haemoglobin, saturation(p, ph), p) - content);
    }

    /** Douglas, Jones and Reed, J Appl Physiol 1988;65:473-477, plasma, at 37 °C. */
    static double plasmaCarbonDioxide(double pco2, double ph) {
        double dissociation = 6.086 + 0.042 * (7.4 - ph) + 0.00472 + 0.00139 * (7.4 - ph);
        return 2.226 * 0.0307 * pco2 * (1 + StrictMath.pow(10, ph - dissociation));
    }

    /** Douglas, Jones and Reed, whole blood, at 37 °C. */
    static double carbonDioxideContent(double pco2, double ph, double haemoglobin, double saturation) {
        return plasmaCarbonDioxide(pco2, ph)
                * (1 - 0.0289 * haemoglobin / ((3.352 - 0.456 * saturation) * (8.142 - ph)));
    }

    /**
     * Base excess of blood, mmol/L, by the equation of Van Slyke as Siggaard-Andersen gave it (Scand J Clin Lab Invest
     * 1977;37 Suppl 146:15-20; constants from memory), haemoglobin turned into mmol/L by 0.6206.
     */
    static double baseExcess(double pco2, double ph, double haemoglobin) {
        double hb = 0.6206 * haemoglobin;
        double bicarbonate = 0.0307 * pco2 * StrictMath.pow(10, ph - 6.095);
        return (1 - 0.023 * hb) * (bicarbonate - 24.4 + (2.3 * hb + 7.7) * (ph - 7.4));
    }

    /**
     * Viscosity of blood against that of blood of 29 % at 34 °C, by the exponential estimate from haematocrit and
     * temperature (Mockros and Leonard, Trans ASAIO 1985;31:628-633, from memory).
     */
    static double viscosityRatio(double haematocrit, double temperature) {
        return StrictMath.exp(1800 / (temperature + 273) - 1800.0 / 307 + 2.31 * (haematocrit - 0.29));
    }

    /** Where a rising function passes zero. */
    static double solved(double low, double high, DoubleUnaryOperator rising) {
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (rising.applyAsDouble(middle) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
