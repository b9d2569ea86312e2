package comparand.unit;

/** The sign that separates whole from fraction in a file's numbers. Declared per file, never guessed. */
public enum DecimalSign {
    POINT('.', ','),
    COMMA(',', '.');

    private final char sign;
    private final char other;

    DecimalSign(char sign, char other) {
        this.sign = sign;
        this.other = other;
    }

    public char sign() {
        return sign;
    }

    /** The sign of the other convention: met in a number, it is a fault to explain. */
    public char other() {
        return other;
    }
}
