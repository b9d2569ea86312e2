package comparand.cite;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A work in the list of references.
 *
 * @param id of the work
 * @param label its number as the list prints it, such as {@code 1.}; empty where the style has none
 */
public record Entry(String id, String label, List<Span> spans) {

    /** A stretch of text in one kind of type. */
    public record Span(String text, boolean slanted) {}

    public Entry {
        spans = List.copyOf(spans);
    }

    /** All of it, without its label. */
    public String text() {
        return spans.stream().map(Span::text).collect(Collectors.joining());
    }
}
