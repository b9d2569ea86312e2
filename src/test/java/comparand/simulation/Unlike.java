package comparand.simulation;

/** How the conditions of a published value differ from those at home. */
enum Unlike {
    ALIKE,
    WITHIN_TOLERANCE,
    FLOW_BETWEEN,
    FLOW_BEYOND,
    HAEMOGLOBIN,
    TEMPERATURE,
    LIQUID,
    PARTS,
    SILENT
}
