package comparand.read.proposal;

import comparand.model.library.ColumnRole;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What columns are called in the trade, as far as one name has one meaning. Common practice. */
final class TradeWords {

    private static final Map<String, String> QUANTITIES = new HashMap<>();
    private static final Map<String, ColumnRole> ROLES = new HashMap<>();

    static {
        quantity("haemoglobin", "hb", "hgb", "thb", "cthb", "hemoglobin", "haemoglobin");
        quantity("haematocrit", "hct", "hkt", "hematocrit", "haematocrit");
        quantity("blood-flow", "flow", "q", "qb", "blood flow", "pump flow");
        quantity("inlet-pressure", "p in", "pin", "inlet pressure", "pressure in");
        quantity("outlet-pressure", "p out", "pout", "outlet pressure", "pressure out");
        quantity("pressure-drop", "dp", "delta p", "pressure drop");
        quantity("inlet-saturation", "svo2", "v so2", "s in", "inlet saturation");
        quantity("outlet-saturation", "sao2", "a so2", "s out", "outlet saturation");
        quantity("inlet-po2", "pvo2", "v po2", "inlet po2");
        quantity("outlet-po2", "pao2", "a po2", "outlet po2");
        quantity("inlet-pco2", "pvco2", "v pco2", "inlet pco2");
        quantity("oxygen-fraction", "fio2", "o2 fraction");
        quantity("barometric-pressure", "pb", "patm", "barometric pressure");
        quantity("temperature", "t blood", "temp", "temperature", "blood temperature");
        quantity("inlet-blood-temperature", "t blood in", "t b in");
        quantity("outlet-blood-temperature", "t blood out", "t b out");
        quantity("inlet-water-temperature", "t water in", "t w in");
        quantity("gas-temperature", "t gas");
        quantity("exhaust-co2-fraction", "exhaust co2", "feco2");
        quantity("water-flow", "water", "water flow");
        quantity("base-excess", "be", "base excess");
        quantity("patient-weight", "weight", "body weight");
        quantity("bypass-duration", "bypass", "bypass time", "bypass duration");
        quantity("duration", "hours", "duration");
        quantity("loop-volume", "loop", "loop volume");
        quantity("free-haemoglobin-start", "fhb start", "pfhb start", "free hb start");
        quantity("free-haemoglobin-end", "fhb end", "pfhb end", "free hb end");
        quantity("bubble-volume-upstream", "volume up");
        quantity("bubble-volume-downstream", "volume down");
        quantity("bubble-count-upstream", "count up");
        quantity("bubble-count-downstream", "count down");
        quantity("phase", "phase");

        role(ColumnRole.DEVICE, "device", "oxygenator", "device id", "model", "gerät");
        role(ColumnRole.UNIT, "unit", "unit id", "device unit", "serial", "serial no");
        role(ColumnRole.RUN, "run", "run id");
        role(ColumnRole.CASE, "case", "case id", "patient", "patient id", "fall");
        role(ColumnRole.CENTRE, "centre", "center", "hospital", "site", "klinik");
        role(ColumnRole.SAMPLE, "sample", "sample no", "sample id", "probe");
        role(ColumnRole.TIME_POINT, "time point", "timepoint");
        role(ColumnRole.DATE, "date", "day");
        role(ColumnRole.REMARK, "remark", "remarks", "note", "notes", "comment", "comments", "bemerkung");
    }

    private TradeWords() {}

    private static void quantity(String id, String... names) {
        for (var name : names) {
            QUANTITIES.put(name, id);
        }
        QUANTITIES.put(id.replace('-', ' '), id);
    }

    private static void role(ColumnRole role, String... names) {
        for (var name : names) {
            ROLES.put(name, role);
        }
    }

    static Optional<String> quantity(String name) {
        return Optional.ofNullable(QUANTITIES.get(name));
    }

    static Optional<ColumnRole> role(String name) {
        return Optional.ofNullable(ROLES.get(name));
    }
}
