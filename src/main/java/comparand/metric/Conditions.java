package comparand.metric;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The conditions the tool knows: what a careful reader of bench and clinical papers records. A metric declared in a
 * library may name further ones.
 */
public final class Conditions {

    private static final Map<String, Condition> ALL = new LinkedHashMap<>();

    // what was tested, and in what
    public static final Condition TEST_MODEL = add(Condition.oneOf(
            "test-model",
            "test model",
            "model",
            "clinical",
            "animal-in-vivo",
            "bench-blood-human",
            "bench-blood-animal",
            "bench-water",
            "bench-glycerol",
            "computational"));
    public static final Condition SPECIES =
            add(Condition.oneOf("species", "blood species", "species", "human", "bovine", "porcine", "ovine"));

    // flows and gas
    public static final Condition BLOOD_FLOW = add(Condition.number("blood-flow", "blood flow", "flow", "L/min"));
    /** Of a case or run; what a label allows is held against it too. */
    public static final Condition LARGEST_BLOOD_FLOW =
            add(Condition.number("largest-blood-flow", "largest blood flow", "flow max", "L/min"));

    public static final Condition FLOW_INDEX =
            add(Condition.number("flow-index", "blood flow per body surface", "flow/m²", "L/min/m²"));
    public static final Condition WATER_FLOW = add(Condition.number("water-flow", "water flow", "water", "L/min"));
    public static final Condition GAS_BLOOD_RATIO =
            add(Condition.number("gas-blood-ratio", "gas-to-blood flow ratio", "gas:blood", "1"));
    public static final Condition OXYGEN_FRACTION =
            add(Condition.number("oxygen-fraction", "oxygen fraction of the sweep gas", "O₂ fraction", "1"));
    public static final Condition GAS_FLOW =
            add(Condition.number("sweep-gas-flow", "sweep gas flow", "gas flow", "L/min"));
    public static final Condition OXYGEN_TRANSFER =
            add(Condition.number("oxygen-transfer", "oxygen uptake", "VO₂", "mL/min"));
    public static final Condition MAC_FRACTION = add(Condition.number(
            "mac-fraction",
            "anaesthetic in the sweep gas, as a share of the minimum alveolar concentration",
            "MAC",
            "1"));
    public static final Condition GAS_VOLUME_BASIS = add(Condition.oneOf(
            "gas-volume-basis", "reference state of gas volumes", "gas basis", "STPD", "BTPS", "ATPS", "ATPD"));
    public static final Condition BAROMETRIC_PRESSURE =
            add(Condition.number("barometric-pressure", "barometric pressure", "PB", "mmHg"));

    // the blood
    public static final Condition HAEMOGLOBIN = add(Condition.number("haemoglobin", "haemoglobin", "Hb", "g/dL"));
    public static final Condition HAEMATOCRIT = add(Condition.number("haematocrit", "haematocrit", "Hct", "%"));
    public static final Condition INLET_SATURATION =
            add(Condition.number("inlet-saturation", "inlet oxygen saturation", "SvO₂", "%"));
    public static final Condition OUTLET_SATURATION =
            add(Condition.number("outlet-saturation", "outlet oxygen saturation", "SaO₂", "%"));

    public static final Condition INLET_PCO2 =
            add(Condition.number("inlet-pco2", "inlet carbon dioxide pressure", "PvCO₂", "mmHg"));
    public static final Condition BASE_EXCESS = add(Condition.number("base-excess", "base excess", "BE", "mmol/L"));
    public static final Condition TEMPERATURE = add(Condition.number("temperature", "blood temperature", "temp", "°C"));

    // bubbles
    public static final Condition BUBBLE_CHALLENGE =
            add(Condition.words("bubble-challenge", "air challenge", "challenge"));
    public static final Condition BUBBLE_SIZE_FROM =
            add(Condition.number("bubble-size-from", "smallest bubble counted", "bubbles from", "µm"));
    public static final Condition BUBBLE_DETECTOR = add(Condition.oneOf(
            "bubble-detector",
            "bubble detector",
            "detector",
            "ultrasound-pulse-echo",
            "ultrasound-doppler",
            "optical",
            "electrical-impedance"));

    // time and circuit
    public static final Condition DURATION = add(Condition.number("duration", "duration of the test", "duration", "h"));
    public static final Condition BYPASS_DURATION =
            add(Condition.number("bypass-duration", "duration of bypass", "bypass", "min"));
    public static final Condition LOOP_VOLUME =
            add(Condition.number("loop-volume", "volume of the test loop", "loop", "L"));
    public static final Condition PUMP = add(Condition.words("pump", "pump", "pump"));
    public static final Condition PATIENT_WEIGHT =
            add(Condition.number("patient-weight", "body weight of the patients", "weight", "kg"));
    public static final Condition TRANSFUSION = add(Condition.oneOf(
            "transfusion",
            "blood, plasma or platelets given, or blood concentrated, between the samples",
            "transfusion",
            "none",
            "given"));
    public static final Condition SAMPLING_TIME =
            add(Condition.words("sampling-time", "time of the later sample", "sampled"));
    public static final Condition INLET_BLOOD =
            add(Condition.words("inlet-blood", "standard blood at the inlet", "inlet blood"));
    public static final Condition PHASE = add(
            Condition.oneOf("phase", "phase of bypass", "phase", "cooling", "stable", "rewarming", "end-of-bypass"));

    private Conditions() {}

    private static Condition add(Condition condition) {
        ALL.put(condition.id(), condition);
        return condition;
    }

    /** By id, in the order above. */
    public static Map<String, Condition> all() {
        return Collections.unmodifiableMap(ALL);
    }

    /** The ids in the order in which conditions are printed; what a metric lists elsewhere keeps its own order. */
    public static List<String> ids() {
        return List.copyOf(ALL.keySet());
    }
}
