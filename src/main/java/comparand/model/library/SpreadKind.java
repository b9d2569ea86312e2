package comparand.model.library;

/** What the figure behind a published mean or median is. */
public enum SpreadKind implements Spelled {
    SD("sd"),
    SE("se"),
    CI95("ci95"),
    IQR("iqr"),
    RANGE("range"),
    /** Printed, as after a bare ±, without saying which kind. */
    NOT_STATED("not stated"),
    NOT_REPORTED("not reported");

    private final String spelling;

    SpreadKind(String spelling) {
        this.spelling = spelling;
    }

    @Override
    public String spelling() {
        return spelling;
    }

    /** How many figures describe it: two ends, one width, or none. */
    public int figures() {
        return switch (this) {
            case SD, SE, NOT_STATED -> 1;
            case CI95, IQR, RANGE -> 2;
            case NOT_REPORTED -> 0;
        };
    }
}
