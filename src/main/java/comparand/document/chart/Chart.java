package comparand.document.chart;

import java.util.List;

/**
 * A figure.
 *
 * @param id unique in a run, in kebab case: also the name of its files
 * @param message what it shows, in one sentence without its numbers
 * @param alternative the message and the numbers, for who cannot see it
 * @param panels from left to right, each with axes of its own
 * @param key what the marks mean, in the order of printing; empty where direct labels say it
 * @param notes said below it, one line each, such as conditions, numbers of units and sources
 */
public record Chart(
        String id, String message, String alternative, List<Panel> panels, List<KeyEntry> key, List<String> notes) {

    public Chart {
        panels = List.copyOf(panels);
        key = List.copyOf(key);
        notes = List.copyOf(notes);
        if (!id.matches("[a-z][a-z0-9-]*")) {
            throw new IllegalArgumentException("the id of a figure is in kebab case, got: " + id);
        }
        if (message.isBlank() || alternative.isBlank() || panels.isEmpty()) {
            throw new IllegalArgumentException("a figure has a message, an alternative in words, and panels");
        }
    }

    /** The meaning of one mark. */
    public record KeyEntry(Mark mark, Trace trace, Ink ink, String means) {}
}
