package comparand.demo;

import static comparand.demo.CaseDataRead.number;
import static comparand.demo.CaseDataRead.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A row of a case file as read back, in one set of units: mmHg, L/min, 10⁹/L, mg/dL, fractions. NaN is missing.
 *
 * @param device Q, M, S, or empty
 */
record CaseDataReadCase(
        String id,
        String device,
        double weight,
        double height,
        double bypass,
        double fullFlow,
        double pressureDrop,
        double lowest,
        double plateletsBefore,
        double plateletsAfter,
        double haematocritBefore,
        double haematocritAfter,
        double freeHaemoglobin,
        String donor,
        String changed,
        String converted) {

    static final double MMHG_PER_KPA = 1000 / 133.322;

    double plateletChange() {
        return 100 * (plateletsAfter / plateletsBefore - 1);
    }

    double correctedPlateletChange() {
        return 100 * (plateletsAfter * haematocritBefore / haematocritAfter / plateletsBefore - 1);
    }

    /** Body surface after Mosteller, m². */
    double surface() {
        return Math.sqrt(height * weight / 3600);
    }

    String hospital() {
        return id.substring(0, 1);
    }

    /** Every row of the three hospitals. */
    static List<CaseDataReadCase> all(CaseDataRead files) {
        var rows = new ArrayList<CaseDataReadCase>();
        files.csv("norrisgate-cases.csv").forEach(r -> rows.add(norrisgate(r)));
        files.sheet("Cases").forEach(r -> rows.add(stAldwyn(r)));
        var laboratory = files.csv("lake-ferran-labor.csv");
        files.csv("lake-ferran-faelle.csv").forEach(r -> rows.add(lakeFerran(r, laboratory)));
        return rows;
    }

    /** Those that count: each once, with a device, and not gone on to life support. */
    static List<CaseDataReadCase> counted(CaseDataRead files) {
        return all(files).stream()
                .distinct()
                .filter(c -> !c.device.isEmpty() && c.converted.equals("n"))
                .toList();
    }

    private static CaseDataReadCase norrisgate(Map<String, String> r) {
        return new CaseDataReadCase(
                word(r, "case"),
                word(r, "device").substring(0, 1),
                number(r, "weight_kg", 1),
                number(r, "height_cm", 1),
                number(r, "bypass_min", 1),
                number(r, "max_flow_lpm", 1),
                number(r, "p_in_mmhg", 1) - number(r, "p_out_mmhg", 1),
                number(r, "min_temp_c", 1),
                number(r, "plt_before_10e9l", 1),
                number(r, "plt_after_10e9l", 1),
                number(r, "hct_before_pct", 0.01),
                number(r, "hct_after_pct", 0.01),
                number(r, "free_hb_end_mgdl", 1),
                word(r, "donor_red_cells"),
                word(r, "device_changed"),
                word(r, "converted"));
    }

    private static CaseDataReadCase stAldwyn(Map<String, String> r) {
        var device = word(r, "Oxygenator");
        return new CaseDataReadCase(
                word(r, "Case No"),
                device.isEmpty() ? "" : device.substring(0, 1),
                number(r, "Weight (kg)", 1),
                number(r, "Height (cm)", 1),
                number(r, "Bypass (min)", 1),
                number(r, "Max flow (L/min)", 1),
                number(r, "P drop (kPa)", MMHG_PER_KPA),
                number(r, "Lowest temp (°C)", 1),
                number(r, "Platelets pre (10^9/L)", 1),
                number(r, "Platelets post (10^9/L)", 1),
                number(r, "Hct pre", 1),
                number(r, "Hct post", 1),
                number(r, "Free Hb end (mg/dL)", 1),
                yesOrNo(word(r, "Donor RBC")),
                yesOrNo(word(r, "Device changed")),
                yesOrNo(word(r, "Converted to life support")));
    }

    private static CaseDataReadCase lakeFerran(Map<String, String> r, List<Map<String, String>> laboratory) {
        var id = word(r, "Fall");
        return new CaseDataReadCase(
                id,
                word(r, "Oxygenator").substring(0, 1),
                number(r, "Gewicht_kg", 1),
                number(r, "Größe_cm", 1),
                number(r, "Bypass_min", 1),
                number(r, "Fluss_max_ml_min", 0.001),
                number(r, "P_ein_mmHg", 1) - number(r, "P_aus_mmHg", 1),
                number(r, "Temp_min_°C", 1),
                value(laboratory, id, "vor", "Thrombozyten", "10^9/L", 1),
                value(laboratory, id, "Ende", "Thrombozyten", "10^9/L", 1),
                value(laboratory, id, "vor", "Hämatokrit", "%", 0.01),
                value(laboratory, id, "Ende", "Hämatokrit", "%", 0.01),
                value(laboratory, id, "Ende", "freies Hb", "g/L", 100),
                yesOrNo(word(r, "Fremdblut")),
                yesOrNo(word(r, "Oxygenatorwechsel")),
                yesOrNo(word(r, "Übergang_ECLS")));
    }

    private static double value(
            List<Map<String, String>> rows, String id, String when, String analyte, String unit, double factor) {
        var found = rows.stream()
                .filter(r -> word(r, "Fall").equals(id)
                        && word(r, "Zeitpunkt").equals(when)
                        && word(r, "Analyt").equals(analyte)
                        && word(r, "Einheit").equals(unit))
                .toList();
        if (found.size() != 1) {
            throw new IllegalArgumentException("%s %s of %s: %d rows".formatted(analyte, when, id, found.size()));
        }
        return number(found.get(0), "Wert", factor);
    }

    private static String yesOrNo(String word) {
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "yes", "ja" -> "y";
            case "no", "nein" -> "n";
            default -> throw new IllegalArgumentException(word);
        };
    }
}
