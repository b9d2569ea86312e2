package comparand.metric;

/**
 * The letters of the formulas: each quantity has one id, one unit and one meaning, whichever formula asks for it. What is
 * measured at both ends of the blood path is found under {@link Side}.
 */
final class Letters {

    // flows
    static final Input BLOOD_FLOW = Input.of("blood-flow", "Q", "blood flow", "L/min");
    static final Input WATER_FLOW = Input.of("water-flow", "Q_w", "water flow", "L/min");
    static final Input SWEEP_FLOW = Input.of("sweep-gas-flow", "Qg_in", "flow of dry sweep gas at t and PB", "L/min");
    static final Input SWEEP_FLOW_STPD =
            Input.of("sweep-gas-flow-stpd", "Qg_in,STPD", "flow of sweep gas at STPD", "L/min");
    static final Input EXHAUST_FLOW =
            Input.of("exhaust-gas-flow", "Qg_out", "flow of dry exhaust gas at t and PB", "L/min");
    static final Input EXHAUST_FLOW_SATURATED = Input.of(
            "exhaust-gas-flow-saturated", "Qg_out,s", "flow of exhaust gas saturated with water at t and PB", "L/min");
    static final Input EXHAUST_FLOW_BTPS = Input.of(
            "exhaust-gas-flow-btps", "Qg_out,BTPS", "flow of exhaust gas at 37 °C, saturated with water", "L/min");
    static final Input EXHAUST_FLOW_STPD =
            Input.of("exhaust-gas-flow-stpd", "Qg_out,STPD", "flow of exhaust gas at STPD", "L/min");
    static final Input LABELLED_FLOW =
            Input.of("labelled-blood-flow", "Q_max", "largest blood flow the instructions for use allow", "L/min");
    static final Input FLOW_INDEX = Input.of("flow-index", "CI", "blood flow per body surface", "L/min/m²");

    // gas
    static final Input OXYGEN_FRACTION = Input.of("oxygen-fraction", "F_O₂", "oxygen fraction of the sweep gas", "1");
    static final Input CORRECTED_OXYGEN_FRACTION =
            Input.of("corrected-oxygen-fraction", "cF_O₂", "oxygen fraction corrected to 150 mmHg", "1");
    static final Input EXHAUST_OXYGEN_FRACTION =
            Input.of("exhaust-oxygen-fraction", "F_E,O₂", "oxygen fraction of the dry exhaust gas", "1");
    static final Input SWEEP_CO2_FRACTION =
            Input.of("sweep-co2-fraction", "F_I", "carbon dioxide fraction of the sweep gas", "1");
    static final Input EXHAUST_CO2_FRACTION =
            Input.of("exhaust-co2-fraction", "F_E", "carbon dioxide fraction of the exhaust gas", "1");
    static final Input EXHAUST_PCO2 =
            Input.of("exhaust-pco2", "P_E", "carbon dioxide pressure of the exhaust gas", "mmHg");
    static final Input GAS_OUTLET_PO2 =
            Input.of("gas-outlet-po2", "P_g,O₂", "oxygen pressure measured at the gas outlet", "mmHg");
    static final Input GAS_TEMPERATURE =
            Input.of("gas-temperature", "t", "temperature at which the gas is metered", "°C");
    static final Input BAROMETRIC_PRESSURE = Input.of("barometric-pressure", "PB", "barometric pressure", "mmHg");
    static final Input VAPOUR_PRESSURE = Input.of(
            "water-vapour-pressure", "PH₂O", "pressure of saturated water vapour at blood temperature", "mmHg");
    static final Input GAS_INLET_PRESSURE =
            Input.of("gas-inlet-pressure", "P_g,in", "gas pressure at the gas inlet", "mmHg");
    static final Input GAS_OUTLET_PRESSURE =
            Input.of("gas-outlet-pressure", "P_g,out", "gas pressure at the gas outlet", "mmHg");

    // blood
    static final Input HAEMOGLOBIN = Input.of("haemoglobin", "Hb", "total haemoglobin", "g/dL");
    static final Input HAEMOGLOBIN_AMOUNT =
            Input.of("haemoglobin-amount", "ctHb", "total haemoglobin as amount of monomer (iron)", "mmol/L");
    static final Input HAEMOGLOBIN_TETRAMER_AMOUNT =
            Input.of("haemoglobin-tetramer-amount", "ctHb₄", "total haemoglobin as amount of tetramer", "mmol/L");
    static final Input CARBOXYHAEMOGLOBIN =
            Input.of("carboxyhaemoglobin-fraction", "F_CO", "share of carboxyhaemoglobin", "1");
    static final Input METHAEMOGLOBIN = Input.of("methaemoglobin-fraction", "F_Met", "share of methaemoglobin", "1");
    static final Input HAEMATOCRIT = Input.of("haematocrit", "Hct", "haematocrit", "%");
    static final Input TEMPERATURE = Input.of("temperature", "T", "blood temperature", "°C");
    static final Input PLASMA_VISCOSITY = Input.of("plasma-viscosity", "μ_p", "viscosity of plasma", "mPa·s");
    static final Input BLOOD_VISCOSITY = Input.of("blood-viscosity", "μ", "viscosity of blood", "mPa·s");

    // device
    static final Input PRESSURE_DROP = Input.of("pressure-drop", "ΔP", "pressure drop", "mmHg");
    static final Input TRANSDUCER_HEIGHT = Input.of(
            "transducer-height-difference", "h", "height of the outlet transducer above the inlet transducer", "cm");
    static final Input HYDROSTATIC_PRESSURE =
            Input.of("hydrostatic-pressure", "P_h", "pressure of the blood column between the transducers", "mmHg");
    static final Input MEMBRANE_AREA = Input.of("membrane-area", "A_m", "membrane area", "m²");
    static final Input PRIMING_VOLUME = Input.of("priming-volume", "V_p", "priming volume of the device", "mL");
    static final Input HYDRAULIC_DIAMETER =
            Input.of("hydraulic-diameter", "d_h", "hydraulic diameter of the fibre bundle", "µm");
    static final Input VOID_FRACTION = Input.of("void-fraction", "ε", "share of the bundle that blood fills", "1");
    static final Input FIBRE_OUTER_DIAMETER =
            Input.of("fibre-outer-diameter", "d_f", "outer diameter of the fibres", "µm");
    static final Input FIBRE_INNER_DIAMETER =
            Input.of("fibre-inner-diameter", "d_i", "inner diameter of the fibres", "µm");
    static final Input FIBRE_LENGTH = Input.of("fibre-length", "L_f", "effective length of a fibre", "cm");
    static final Input FIBRE_COUNT = Input.of("fibre-count", "n_f", "number of fibres", "{count}");
    static final Input FLOW_PATH = Input.of("flow-path-length", "L", "length of the flow path", "mm");
    static final Input TUBE_RADIUS = Input.of("tube-radius", "r", "inner radius of the tube", "mm");

    // transfer
    static final Input OXYGEN_TRANSFER = Input.of("oxygen-transfer", "VO₂", "oxygen transfer", "mL/min");
    static final Input OXYGEN_PER_LITRE =
            Input.of("oxygen-transfer-per-litre", "VO₂/Q", "oxygen transfer per litre of blood", "mL/L");
    static final Input CARBON_DIOXIDE_TRANSFER =
            Input.of("carbon-dioxide-transfer", "VCO₂", "carbon dioxide transfer", "mL/min");
    static final Input CARBON_DIOXIDE_PER_LITRE = Input.of(
            "carbon-dioxide-transfer-per-litre", "VCO₂/Q", "carbon dioxide transfer per litre of blood", "mL/L");
    static final Input IDEAL_PO2 =
            Input.of("ideal-oxygen-pressure", "P_c′", "oxygen pressure of fully equilibrated blood", "mmHg");
    static final Input IDEAL_CONTENT =
            Input.of("ideal-oxygen-content", "C_c′", "oxygen content of fully equilibrated blood", "mL/dL");

    // bubbles
    static final Input BIN_FROM = Input.of("bubble-bin-from", "d_lo", "lower edge of the size bin", "µm");
    static final Input BIN_TO = Input.of("bubble-bin-to", "d_hi", "upper edge of the size bin", "µm");
    static final Input BUBBLE_DIAMETER =
            Input.of("bubble-diameter", "d", "diameter that stands for the bubbles of a bin", "µm");
    static final Input BUBBLE_SIZE_FROM = Input.of("bubble-size-from", "d_min", "smallest bubble counted", "µm");

    // patient
    static final Input HEIGHT = Input.of("patient-height", "H", "body height", "cm");
    static final Input WEIGHT = Input.of("patient-weight", "W", "body weight", "kg");
    static final Input AGE = Input.of("patient-age", "a", "age", "a");
    static final Input BODY_SURFACE = Input.of("body-surface-area", "BSA", "body surface area", "m²");
    static final Input VAPOUR_CONCENTRATION = Input.of(
            "anaesthetic-concentration", "F_an", "concentration of the anaesthetic vapour in the sweep gas", "%");
    static final Input MAC =
            Input.of("minimum-alveolar-concentration", "MAC", "minimum alveolar concentration at the age", "%");

    // haemolysis and dilution
    static final Input FREE_HAEMOGLOBIN_START =
            Input.of("free-haemoglobin-start", "fHb_start", "plasma free haemoglobin at the start", "g/L");
    static final Input FREE_HAEMOGLOBIN_END =
            Input.of("free-haemoglobin-end", "fHb_end", "plasma free haemoglobin at the end", "g/L");
    static final Input LOOP_VOLUME = Input.of("loop-volume", "V", "volume of the test loop", "L");
    static final Input DURATION = Input.of("duration", "T_d", "duration of the test", "min");
    static final Input HAEMOLYSIS_INDEX =
            Input.of("normalised-index-of-haemolysis", "NIH", "normalised index of haemolysis", "mg/100 L");
    static final Input CONTROL_INDEX = Input.of(
            "control-index-of-haemolysis", "NIH_c", "index of the paired control circuit without device", "mg/100 L");

    private Letters() {}
}
