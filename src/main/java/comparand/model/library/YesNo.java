package comparand.model.library;

/** A plain answer. {@code true} and {@code false} are refused: not everybody who keeps a library programs. */
public enum YesNo {
    YES,
    NO;

    public boolean isYes() {
        return this == YES;
    }
}
