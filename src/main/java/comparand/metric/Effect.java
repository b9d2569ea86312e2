package comparand.metric;

/** What more of a condition, by itself, does to a metric. */
public enum Effect {
    RAISES,
    LOWERS,
    NONE,
    /** Physics does not tell, or not without more data: said so, never guessed. */
    NOT_PREDICTABLE;

    public Effect reversed() {
        return switch (this) {
            case RAISES -> LOWERS;
            case LOWERS -> RAISES;
            case NONE -> NONE;
            case NOT_PREDICTABLE -> NOT_PREDICTABLE;
        };
    }
}
