package comparand.diag;

/** How much a diagnostic changes the run. The order is the order of printing. */
public enum Severity {
    /** Nothing is written until this is mended. */
    STOP,
    /** The value named is kept out of comparisons; everything else is written. */
    HOLD,
    /** Written among the limitations of the documents. */
    NOTE
}
