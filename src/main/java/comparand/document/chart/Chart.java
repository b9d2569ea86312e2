package comparand.document.chart;

import java.util.List;
import java.util.function.Function;

/** A figure: numbers on axes, or boxes with arrows. */
public sealed interface Chart permits Plot, Diagram {

    /** Unique in a run, in kebab case: also the name of its files. */
    String id();

    /** What it shows, in one sentence without its numbers. */
    String message();

    /** The message and the numbers, for who cannot see it. */
    String alternative();

    /** Said below it, one line each, such as conditions, numbers of units and sources. */
    List<String> notes();

    /** The same with other notes. */
    Chart withNotes(List<String> notes);

    <R> R fold(Function<Plot, R> plot, Function<Diagram, R> diagram);

    /** What holds for a figure of any kind. */
    static void require(String id, String message, String alternative) {
        if (!id.matches("[a-z][a-z0-9-]*")) {
            throw new IllegalArgumentException("the id of a figure is in kebab case, got: " + id);
        }
        if (message.isBlank() || alternative.isBlank()) {
            throw new IllegalArgumentException("a figure has a message and an alternative in words");
        }
    }
}
