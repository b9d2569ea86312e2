package comparand.metric;

/** One way a metric is defined in print: the word used in records, and what it means. */
public record Variant(String id, String meaning) {

    public Variant {
        if (id.isBlank() || meaning.isBlank()) {
            throw new IllegalArgumentException("a variant has an id and a meaning");
        }
    }
}
