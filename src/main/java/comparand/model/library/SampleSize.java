package comparand.model.library;

/** How many of what a value was taken from: {@code 5 units}. */
public record SampleSize(int count, SampleUnit of) {

    public SampleSize {
        if (count < 1) {
            throw new IllegalArgumentException("a sample has at least one member, got " + count);
        }
    }

    @Override
    public String toString() {
        return count + " " + (count == 1 ? of.singular() : of.plural());
    }
}
