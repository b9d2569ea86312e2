package comparand.simulation;

/** What a source does not say. */
enum Silence {
    NONE,
    FLOW,
    HAEMOGLOBIN,
    PARTS
}
