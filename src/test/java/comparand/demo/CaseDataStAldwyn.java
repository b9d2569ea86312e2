package comparand.demo;

import static comparand.demo.CaseDataHospital.KPA_PER_MMHG;
import static comparand.demo.CaseDataHospital.text;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * St Aldwyn: a workbook with the sheets Cases and Samples, two title lines above the headings; pressures in kPa, shares from
 * 0 to 1, and one column of each sheet a formula; what is missing is {@code -}. A hidden sheet holds old entries.
 */
final class CaseDataStAldwyn {

    static final String FILE = "st-aldwyn.xlsx";

    private CaseDataStAldwyn() {}

    static Map<String, byte[]> files(List<CaseDataCase> cases) {
        var workbook = new CaseDataWorkbook();
        var caseTable = cases();
        workbook.sheet(
                "Cases",
                List.of(
                        "St Aldwyn Heart Centre: register of bypass cases",
                        "Invented data, made up for a demonstration"),
                caseTable.headings(),
                cases.stream().map(caseTable::cells).toList());
        var sampleTable = samples();
        workbook.sheet(
                "Samples",
                List.of(
                        "St Aldwyn Heart Centre: blood samples on bypass",
                        "Invented data, made up for a demonstration"),
                sampleTable.headings(),
                CaseData.samples(cases).stream().map(sampleTable::cells).toList());
        workbook.hidden(
                "alt",
                List.of(
                        "Entries before they were checked; no longer valid",
                        "Invented data, made up for a demonstration"),
                List.of("Case No", "Column", "Old entry"),
                List.of(
                        List.of("A-03", "Weight (kg)", "66"),
                        List.of("A-08", "Platelets post (10^9/L)", "14"),
                        List.of("A-13", "Free Hb end (mg/dL)", "290")));
        var files = new LinkedHashMap<String, byte[]>();
        files.put(FILE, workbook.bytes());
        return files;
    }

    private static String kPa(double mmHg) {
        return text(mmHg * KPA_PER_MMHG, 1);
    }

    private static CaseDataTable<CaseDataCase> cases() {
        return new CaseDataTable<CaseDataCase>()
                .column("Case No", CaseDataCase::id)
                .column("Day", c -> text(c.patient().day(), 0))
                .column("Oxygenator", c -> oxygenator(c))
                .column("Age (months)", c -> text(c.patient().ageMonths(), 0))
                .column("Weight (kg)", c -> text(c.patient().weight(), 1))
                .column("Height (cm)", c -> text(c.patient().height(), 0))
                .column("Bypass (min)", c -> text(c.bypassMinutes(), 0))
                .column("Max flow (L/min)", c -> text(c.patient().fullFlow(), 2))
                .column(
                        "Flow at pressure reading (L/min)",
                        c -> text(c.patient().readingFlow(), 2))
                .column("P in (kPa)", c -> kPa(c.pressureIn()))
                .column("P out (kPa)", c -> kPa(c.pressureOut()))
                .column("P drop (kPa)", c -> "=J#-K#")
                .column("Lowest temp (°C)", c -> text(c.patient().lowest(), 1))
                .column("Platelets pre (10^9/L)", c -> text(c.plateletsBefore(), 0))
                .column("Platelets post (10^9/L)", c -> text(c.plateletsAfter(), 0))
                .column("Hct pre", c -> text(c.haematocritBefore(), 3))
                .column("Hct post", c -> text(c.patient().haematocritAfter(), 3))
                .column(
                        "Free Hb end (mg/dL)",
                        c -> c.freeHaemoglobin().isPresent()
                                ? text(c.freeHaemoglobin().getAsInt(), 0)
                                : "-")
                .column("Donor RBC", c -> c.donorCells() ? "Yes" : "No")
                .column("Device changed", c -> "No")
                .column("Converted to life support", c -> c.converted() ? "Yes" : "No")
                .column("Remark", c -> c.deviceNamed() ? "" : "device not written down");
    }

    private static String oxygenator(CaseDataCase subject) {
        if (!subject.deviceNamed()) {
            return "";
        }
        return subject.patient().device() == CaseDataDevice.QUILLANE ? "Quillane 15" : "Skarrow Kid";
    }

    private static CaseDataTable<CaseDataSample> samples() {
        return new CaseDataTable<CaseDataSample>()
                .column("Case No", CaseDataSample::caseId)
                .column("Sample", s -> text(s.number(), 0))
                .column("Min on bypass", s -> text(s.minute(), 0))
                .column("Phase", s -> s.phase().english())
                .column("Flow (L/min)", s -> text(s.flow(), 2))
                .column("Sweep (L/min)", s -> text(s.sweep(), 2))
                .column("Gas/blood", s -> "=F#/E#")
                .column("FiO2", s -> text(s.oxygenFraction(), 2))
                .column("Hb (g/dL)", s -> text(s.haemoglobin(), 1))
                .column("PaO2 (kPa)", s -> kPa(s.arterial().po2()))
                .column("PaCO2 (kPa)", s -> kPa(s.arterial().pco2()))
                .column("pHa", s -> text(s.arterial().ph(), 3))
                .column("SaO2", s -> text(s.arterial().saturation(), 3))
                .column("BE (mmol/L)", s -> text(s.baseExcess(), 1))
                .column("PvO2 (kPa)", s -> kPa(s.venous().po2()))
                .column("PvCO2 (kPa)", s -> kPa(s.venous().pco2()))
                .column("pHv", s -> text(s.venous().ph(), 3))
                .column("SvO2", s -> text(s.venous().saturation(), 3))
                .column("T blood in (°C)", s -> text(s.bloodIn(), 1))
                .column("T blood out (°C)", s -> text(s.bloodOut(), 1))
                .column("T water in (°C)", s -> text(s.waterIn(), 1))
                .column("Water (L/min)", s -> text(CaseDataHospital.ST_ALDWYN.waterFlow, 1))
                .column("P in (kPa)", s -> kPa(s.pressureIn()))
                .column("P out (kPa)", s -> kPa(s.pressureOut()))
                .column("Baro (kPa)", s -> kPa(s.barometer()))
                .column("Remark", s -> "");
    }
}
