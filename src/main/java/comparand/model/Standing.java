package comparand.model;

/** Whether the two sides of a pair are like enough to be compared. Always printed in words. */
public enum Standing {
    SAME,
    SAME_AFTER_CONVERSION,
    CONDITIONS_DIFFER,
    NOT_REPORTED,
    DIFFERENT_QUANTITY;

    public boolean isCompared() {
        return this == SAME || this == SAME_AFTER_CONVERSION;
    }
}
