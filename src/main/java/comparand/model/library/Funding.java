package comparand.model.library;

/** Who paid for the work behind a source. */
public enum Funding implements Spelled {
    INDEPENDENT("independent"),
    MAKER("maker"),
    MIXED("mixed"),
    NOT_REPORTED("not reported");

    private final String spelling;

    Funding(String spelling) {
        this.spelling = spelling;
    }

    @Override
    public String spelling() {
        return spelling;
    }
}
