package comparand.model.library;

/** So many of so many: {@code 19 of 42}. */
public record EventCount(int events, int of) {

    public EventCount {
        if (events < 0 || of < 1 || events > of) {
            throw new IllegalArgumentException(
                    "x of n needs 0 <= x <= n and n > 0, got %d of %d".formatted(events, of));
        }
    }

    @Override
    public String toString() {
        return events + " of " + of;
    }
}
