package comparand.model.library;

/** How a published value came to be known, where it is weaker than print. */
public enum HowKnown {
    /** Its standard deviation was estimated from quartiles or a range. */
    ESTIMATED,
    /** Read from a figure. */
    DIGITISED,
    /** The source calls it approximate. */
    APPROXIMATE
}
