package comparand.model.library;

/** How an unexplained "±" is read. */
public enum SpreadReading {
    /** As a standard deviation. */
    SD,
    /** As a standard error. */
    SE
}
