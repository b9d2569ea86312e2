package comparand.model.library;

/** The sign between the columns of a data file. */
public enum Separator {
    COMMA(','),
    SEMICOLON(';'),
    TAB('\t'),
    BAR('|');

    private final char sign;

    Separator(char sign) {
        this.sign = sign;
    }

    public char sign() {
        return sign;
    }
}
