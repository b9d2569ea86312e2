package comparand.demo;

import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Lake Ferran: semicolons, decimal comma, Windows-1252, German headings; haemoglobin and free haemoglobin in g/L, flow in
 * mL/min, air pressure in hPa; laboratory values one below the other; what is missing is left empty.
 */
final class CaseDataLakeFerran {

    private static final Charset WINDOWS = Charset.forName("windows-1252");

    /** One laboratory value. */
    private record Value(String caseId, String when, String analyte, String value, String unit) {}

    private CaseDataLakeFerran() {}

    static Map<String, byte[]> files(List<CaseDataCase> cases) {
        var values = new ArrayList<Value>();
        cases.forEach(c -> values.addAll(values(c)));
        var files = new LinkedHashMap<String, byte[]>();
        files.put("lake-ferran-faelle.csv", bytes(cases().text(";", cases)));
        files.put("lake-ferran-labor.csv", bytes(laboratory().text(";", values)));
        files.put("lake-ferran-proben.csv", bytes(samples().text(";", CaseData.samples(cases))));
        return files;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(WINDOWS);
    }

    private static String text(double value, int decimals) {
        return CaseDataHospital.text(value, decimals).replace('.', ',');
    }

    private static CaseDataTable<CaseDataCase> cases() {
        return new CaseDataTable<CaseDataCase>()
                .column("Fall", CaseDataCase::id)
                .column("Tag", c -> text(c.patient().day(), 0))
                .column("Oxygenator", c -> c.patient().device() == CaseDataDevice.MIRROWEN ? "MI12" : "SKID")
                .column("Alter_Monate", c -> text(c.patient().ageMonths(), 0))
                .column("Gewicht_kg", c -> text(c.patient().weight(), 1))
                .column("Größe_cm", c -> text(c.patient().height(), 0))
                .column("Bypass_min", c -> text(c.bypassMinutes(), 0))
                .column("Fluss_max_ml_min", c -> text(1000 * c.patient().fullFlow(), 0))
                .column("Fluss_bei_Druck_ml_min", c -> text(1000 * c.patient().readingFlow(), 0))
                .column("P_ein_mmHg", c -> text(c.pressureIn(), 0))
                .column("P_aus_mmHg", c -> text(c.pressureOut(), 0))
                .column("Temp_min_°C", c -> text(c.patient().lowest(), 1))
                .column("Fremdblut", c -> c.donorCells() ? "ja" : "nein")
                .column("Oxygenatorwechsel", c -> "nein")
                .column("Übergang_ECLS", c -> c.converted() ? "ja" : "nein")
                .column("Bemerkung", c -> remark(c));
    }

    private static String remark(CaseDataCase subject) {
        if (subject.id().equals("F-01")) {
            return CaseData.INVENTED_GERMAN;
        }
        return subject.converted() ? "nach Bypass an ECLS übergeben" : "";
    }

    private static List<Value> values(CaseDataCase subject) {
        var id = subject.id();
        var free = subject.freeHaemoglobin().isPresent()
                ? text(subject.freeHaemoglobin().getAsInt() / 100.0, 2)
                : "";
        return List.of(
                new Value(id, "vor", "Thrombozyten", text(subject.plateletsBefore(), 0), "10^9/L"),
                new Value(id, "vor", "Hämatokrit", text(100 * subject.haematocritBefore(), 1), "%"),
                new Value(id, "vor", "Fibrinogen", text(subject.fibrinogenBefore(), 2), "g/L"),
                new Value(id, "Ende", "Thrombozyten", text(subject.plateletsAfter(), 0), "10^9/L"),
                new Value(id, "Ende", "Hämatokrit", text(100 * subject.patient().haematocritAfter(), 1), "%"),
                new Value(id, "Ende", "freies Hb", free, "g/L"),
                new Value(id, "Ende", "Fibrinogen", text(subject.fibrinogenAfter(), 2), "g/L"));
    }

    private static CaseDataTable<Value> laboratory() {
        return new CaseDataTable<Value>()
                .column("Fall", Value::caseId)
                .column("Zeitpunkt", Value::when)
                .column("Analyt", Value::analyte)
                .column("Wert", Value::value)
                .column("Einheit", Value::unit)
                .column("Bemerkung", v -> isFirst(v) ? CaseData.INVENTED_GERMAN : "");
    }

    private static boolean isFirst(Value value) {
        return value.caseId.equals("F-01") && value.when.equals("vor") && value.analyte.equals("Thrombozyten");
    }

    private static CaseDataTable<CaseDataSample> samples() {
        return new CaseDataTable<CaseDataSample>()
                .column("Fall", CaseDataSample::caseId)
                .column("Probe", s -> text(s.number(), 0))
                .column("Minute", s -> text(s.minute(), 0))
                .column("Phase", s -> s.phase().german)
                .column("Fluss_ml_min", s -> text(1000 * s.flow(), 0))
                .column("Gasfluss_l_min", s -> text(s.sweep(), 2))
                .column("FiO2_%", s -> text(100 * s.oxygenFraction(), 0))
                .column("Hb_g_l", s -> text(10 * s.haemoglobin(), 0))
                .column("PaO2_mmHg", s -> text(s.arterial().po2(), 0))
                .column("PaCO2_mmHg", s -> text(s.arterial().pco2(), 0))
                .column("pHa", s -> text(s.arterial().ph(), 3))
                .column("SaO2_%", s -> text(100 * s.arterial().saturation(), 1))
                .column("BE_mmol_l", s -> text(s.baseExcess(), 1))
                .column("PvO2_mmHg", s -> text(s.venous().po2(), 0))
                .column("PvCO2_mmHg", s -> text(s.venous().pco2(), 0))
                .column("pHv", s -> text(s.venous().ph(), 3))
                .column("SvO2_%", s -> text(100 * s.venous().saturation(), 1))
                .column("T_Blut_ein_°C", s -> text(s.bloodIn(), 1))
                .column("T_Blut_aus_°C", s -> text(s.bloodOut(), 1))
                .column("T_Wasser_ein_°C", s -> text(s.waterIn(), 1))
                .column("Wasser_l_min", s -> text(CaseDataHospital.LAKE_FERRAN.waterFlow, 1))
                .column("P_ein_mmHg", s -> text(s.pressureIn(), 0))
                .column("P_aus_mmHg", s -> text(s.pressureOut(), 0))
                .column("Luftdruck_hPa", s -> text(s.barometer() * CaseDataHospital.KPA_PER_MMHG * 10, 0))
                .column("Bemerkung", s -> s.caseId().equals("F-01") && s.number() == 1 ? CaseData.INVENTED_GERMAN : "");
    }
}
