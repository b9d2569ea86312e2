package comparand.model;

/** Which part of the local results a comparand speaks for. */
public enum LocalPart {
    /** All that was measured of a device at a step. */
    WHOLE,
    /** What one of several centres measured. */
    CENTRE,
    /** Cases or runs chosen, or read off, to meet the conditions of one published value. */
    MATCHED
}
