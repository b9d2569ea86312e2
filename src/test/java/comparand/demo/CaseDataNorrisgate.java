package comparand.demo;

import static comparand.demo.CaseDataHospital.text;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Norrisgate: comma separated, decimal point, UTF-8; mmHg, g/dL, mg/dL, per cent; what is missing is {@code n.d.}. */
final class CaseDataNorrisgate {

    private CaseDataNorrisgate() {}

    static Map<String, byte[]> files(List<CaseDataCase> cases) {
        var files = new LinkedHashMap<String, byte[]>();
        files.put("norrisgate-cases.csv", bytes(cases().text(",", cases)));
        files.put("norrisgate-samples.csv", bytes(samples().text(",", CaseData.samples(cases))));
        return files;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static CaseDataTable<CaseDataCase> cases() {
        return new CaseDataTable<CaseDataCase>()
                .column("case", CaseDataCase::id)
                .column("day", c -> text(c.patient().day(), 0))
                .column("device", c -> c.patient().device() == CaseDataDevice.QUILLANE ? "Q15" : "M12")
                .column("age_months", c -> text(c.patient().ageMonths(), 0))
                .column("weight_kg", c -> text(c.patient().weight(), 1))
                .column("height_cm", c -> text(c.patient().height(), 0))
                .column("bypass_min", c -> text(c.bypassMinutes(), 0))
                .column("max_flow_lpm", c -> text(c.patient().fullFlow(), 2))
                .column("flow_at_pressure_lpm", c -> text(c.patient().readingFlow(), 2))
                .column("p_in_mmhg", c -> text(c.pressureIn(), 0))
                .column("p_out_mmhg", c -> text(c.pressureOut(), 0))
                .column("min_temp_c", c -> text(c.patient().lowest(), 1))
                .column("plt_before_10e9l", c -> text(c.plateletsBefore(), 0))
                .column("plt_after_10e9l", c -> text(c.plateletsAfter(), 0))
                .column("hct_before_pct", c -> text(100 * c.haematocritBefore(), 1))
                .column("hct_after_pct", c -> text(100 * c.patient().haematocritAfter(), 1))
                .column(
                        "free_hb_end_mgdl",
                        c -> c.freeHaemoglobin().isPresent()
                                ? text(c.freeHaemoglobin().getAsInt(), 0)
                                : "n.d.")
                .column("donor_red_cells", c -> c.donorCells() ? "y" : "n")
                .column("device_changed", c -> "n")
                .column("converted", c -> c.converted() ? "y" : "n")
                .column("remark", c -> c.id().equals("N-01") ? CaseData.INVENTED : "");
    }

    private static CaseDataTable<CaseDataSample> samples() {
        return new CaseDataTable<CaseDataSample>()
                .column("case", CaseDataSample::caseId)
                .column("sample", s -> text(s.number(), 0))
                .column("minute", s -> text(s.minute(), 0))
                .column("phase", s -> s.phase().english())
                .column("flow_lpm", s -> text(s.flow(), 2))
                .column("sweep_lpm", s -> text(s.sweep(), 2))
                .column("fio2_pct", s -> text(100 * s.oxygenFraction(), 0))
                .column("hb_gdl", s -> text(s.haemoglobin(), 1))
                .column("pao2_mmhg", s -> text(s.arterial().po2(), 0))
                .column("paco2_mmhg", s -> text(s.arterial().pco2(), 0))
                .column("pha", s -> text(s.arterial().ph(), 3))
                .column("sao2_pct", s -> text(100 * s.arterial().saturation(), 1))
                .column("be_mmoll", s -> text(s.baseExcess(), 1))
                .column("pvo2_mmhg", s -> text(s.venous().po2(), 0))
                .column("pvco2_mmhg", s -> text(s.venous().pco2(), 0))
                .column("phv", s -> text(s.venous().ph(), 3))
                .column("svo2_pct", s -> text(100 * s.venous().saturation(), 1))
                .column("t_blood_in_c", s -> text(s.bloodIn(), 1))
                .column("t_blood_out_c", s -> text(s.bloodOut(), 1))
                .column("t_water_in_c", s -> text(s.waterIn(), 1))
                .column("water_lpm", s -> text(CaseDataHospital.NORRISGATE.waterFlow, 1))
                .column("p_in_mmhg", s -> text(s.pressureIn(), 0))
                .column("p_out_mmhg", s -> text(s.pressureOut(), 0))
                .column("pb_mmhg", s -> text(s.barometer(), 0))
                .column("remark", s -> s.caseId().equals("N-01") && s.number() == 1 ? CaseData.INVENTED : "");
    }
}
