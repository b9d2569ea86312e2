package comparand.model;

/** How a spread, or a value, came to be known; a derived one carries the weakest label of what it was made from. */
public enum Label {
    /** Not from the source: borrowed. */
    IMPUTED,
    /** The source calls it approximate. */
    APPROXIMATE,
    /** Read from a figure. */
    DIGITISED,
    /** Under an assumption about the distribution. */
    ESTIMATED,
    /** Algebra on printed numbers. */
    EXACT,
    /** As printed, or computed from raw data. */
    REPORTED;

    public Label weakerOf(Label other) {
        return compareTo(other) <= 0 ? this : other;
    }
}
