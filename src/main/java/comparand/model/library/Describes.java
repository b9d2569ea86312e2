package comparand.model.library;

/** What one row of a file stands for whose rows are no results: it is joined by its id to the rows of the study's other files. */
public enum Describes {
    /** One row per case: weight, body surface, donor blood. */
    CASES,
    /** One row per device unit: lot, filter. */
    UNITS,
    /** One row per device of the library. */
    DEVICES
}
