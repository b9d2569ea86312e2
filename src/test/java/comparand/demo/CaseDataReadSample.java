package comparand.demo;

import static comparand.demo.CaseDataRead.number;
import static comparand.demo.CaseDataRead.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A row of a sample file as read back, in one set of units: mmHg, L/min, g/dL, fractions. NaN is missing. */
record CaseDataReadSample(
        String id,
        double minute,
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
        double pressureDrop,
        double barometer) {

    /** One side of the device. */
    record Gases(double po2, double pco2, double ph, double saturation) {
        double oxygen(double haemoglobin) {
            return 1.34 * haemoglobin * saturation + 0.0031 * po2;
        }

        double carbonDioxide(double haemoglobin) {
            return CaseDataBlood.carbonDioxideContent(pco2, ph, haemoglobin, saturation);
        }
    }

    /** Oxygen taken up, mL/min. */
    double uptake() {
        return 10 * flow * (arterial.oxygen(haemoglobin) - venous.oxygen(haemoglobin));
    }

    /** Carbon dioxide given off per oxygen taken up. */
    double exchangeRatio() {
        return 10 * flow * (venous.carbonDioxide(haemoglobin) - arterial.carbonDioxide(haemoglobin)) / uptake();
    }

    double shunt() {
        double ideal = 1.34 * haemoglobin + 0.0031 * (oxygenFraction * (barometer - 47) - arterial.pco2);
        return (ideal - arterial.oxygen(haemoglobin)) / (ideal - venous.oxygen(haemoglobin));
    }

    /** Every sample of the three hospitals. */
    static List<CaseDataReadSample> all(CaseDataRead files) {
        double kPa = CaseDataReadCase.MMHG_PER_KPA;
        var rows = new ArrayList<CaseDataReadSample>();
        files.csv("norrisgate-samples.csv")
                .forEach(r -> rows.add(sample(
                        r,
                        "case,minute,flow_lpm,sweep_lpm,fio2_pct,hb_gdl,pao2_mmhg,paco2_mmhg,pha,sao2_pct,be_mmoll,"
                                + "pvo2_mmhg,pvco2_mmhg,phv,svo2_pct,t_blood_in_c,t_blood_out_c,t_water_in_c,p_in_mmhg,"
                                + "p_out_mmhg,pb_mmhg",
                        new Units(1, 1, 0.01, 1, 1))));
        files.sheet("Samples")
                .forEach(r -> rows.add(sample(
                        r,
                        "Case No,Min on bypass,Flow (L/min),Sweep (L/min),FiO2,Hb (g/dL),PaO2 (kPa),PaCO2 (kPa),pHa,SaO2,"
                                + "BE (mmol/L),PvO2 (kPa),PvCO2 (kPa),pHv,SvO2,T blood in (°C),T blood out (°C),"
                                + "T water in (°C),P in (kPa),P out (kPa),Baro (kPa)",
                        new Units(1, 1, 1, kPa, kPa))));
        files.csv("lake-ferran-proben.csv")
                .forEach(r -> rows.add(sample(
                        r,
                        "Fall,Minute,Fluss_ml_min,Gasfluss_l_min,FiO2_%,Hb_g_l,PaO2_mmHg,PaCO2_mmHg,pHa,SaO2_%,BE_mmol_l,"
                                + "PvO2_mmHg,PvCO2_mmHg,pHv,SvO2_%,T_Blut_ein_°C,T_Blut_aus_°C,T_Wasser_ein_°C,P_ein_mmHg,"
                                + "P_aus_mmHg,Luftdruck_hPa",
                        new Units(0.001, 0.1, 0.01, 1, kPa / 10))));
        return rows;
    }

    /** What the columns of a hospital are written in. */
    private record Units(double flow, double haemoglobin, double share, double pressure, double barometer) {}

    private static CaseDataReadSample sample(Map<String, String> row, String columns, Units units) {
        var names = List.of(columns.split(",", -1));
        return new CaseDataReadSample(
                word(row, names.get(0)),
                number(row, names.get(1), 1),
                number(row, names.get(2), units.flow),
                number(row, names.get(3), 1),
                number(row, names.get(4), units.share),
                number(row, names.get(5), units.haemoglobin),
                gases(row, names.subList(6, 10), units),
                number(row, names.get(10), 1),
                gases(row, names.subList(11, 15), units),
                number(row, names.get(15), 1),
                number(row, names.get(16), 1),
                number(row, names.get(17), 1),
                number(row, names.get(18), units.pressure) - number(row, names.get(19), units.pressure),
                number(row, names.get(20), units.barometer));
    }

    private static Gases gases(Map<String, String> row, List<String> names, Units units) {
        return new Gases(
                number(row, names.get(0), units.pressure),
                number(row, names.get(1), units.pressure),
                number(row, names.get(2), 1),
                number(row, names.get(3), units.share));
    }
}
