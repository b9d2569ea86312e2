package comparand.demo;

import java.util.Locale;

/**
 * One invented blood sample during bypass, rounded as a monitor shows it; pressures in mmHg whatever the hospital writes.
 *
 * @param minute since the start of bypass
 * @param flow and {@code sweep}, L/min
 * @param oxygenFraction of the sweep gas
 * @param haemoglobin g/dL
 * @param bloodIn temperature at the inlet, °C; so are {@code bloodOut} and {@code waterIn}
 */
record CaseDataSample(
        String caseId,
        int number,
        int minute,
        Phase phase,
        double flow,
        double sweep,
        double oxygenFraction,
        double haemoglobin,
        Gases arterial,
        double baseExcess,
        Gases venous,
        double bloodIn,
        double bloodOut,
        double waterIn,
        double pressureIn,
        double pressureOut,
        double barometer) {

    /** Blood gases, reported at 37 °C. */
    record Gases(double po2, double pco2, double ph, double saturation) {
        double oxygen(double haemoglobin) {
            return CaseDataBlood.oxygenContent(haemoglobin, saturation, po2);
        }

        double carbonDioxide(double haemoglobin) {
            return CaseDataBlood.carbonDioxideContent(pco2, ph, haemoglobin, saturation);
        }
    }

    /** What the perfusionist was doing with the temperature. */
    enum Phase {
        COOLING("Kühlung"),
        STABLE("stabil"),
        REWARMING("Erwärmung");

        final String german;

        Phase(String german) {
            this.german = german;
        }

        String english() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Oxygen taken up, mL/min, from the numbers as recorded. */
    double oxygenTransfer() {
        return 10 * flow * (arterial.oxygen(haemoglobin) - venous.oxygen(haemoglobin));
    }

    double carbonDioxideTransfer() {
        return 10 * flow * (venous.carbonDioxide(haemoglobin) - arterial.carbonDioxide(haemoglobin));
    }

    /** Oxygen pressure of the sweep gas less the carbon dioxide of the blood that leaves, mmHg. */
    double idealPressure() {
        return oxygenFraction * (barometer - 47) - arterial.pco2;
    }

    /** Share of the blood that passes as if it had met no gas. */
    double shunt() {
        double ideal = CaseDataBlood.oxygenContent(haemoglobin, 1, idealPressure());
        return (ideal - arterial.oxygen(haemoglobin)) / (ideal - venous.oxygen(haemoglobin));
    }
}
