package comparand.document.chart;

import java.util.List;
import java.util.function.Function;

/**
 * Points, intervals and lines on axes.
 *
 * @param id see {@link Chart#id()}
 * @param message see {@link Chart#message()}
 * @param alternative see {@link Chart#alternative()}
 * @param panels from left to right, each with axes of its own
 * @param key what the marks mean, in the order of printing; empty where direct labels say it
 * @param notes see {@link Chart#notes()}
 */
public record Plot(
        String id, String message, String alternative, List<Panel> panels, List<KeyEntry> key, List<String> notes)
        implements Chart {

    public Plot {
        panels = List.copyOf(panels);
        key = List.copyOf(key);
        notes = List.copyOf(notes);
        Chart.require(id, message, alternative);
        if (panels.isEmpty()) {
            throw new IllegalArgumentException("a plot has panels");
        }
    }

    @Override
    public Plot withNotes(List<String> others) {
        return new Plot(id, message, alternative, panels, key, others);
    }

    @Override
    public <R> R fold(Function<Plot, R> plot, Function<Diagram, R> diagram) {
        return plot.apply(this);
    }

    /** The meaning of one mark. */
    public record KeyEntry(Mark mark, Trace trace, Ink ink, String means) {}
}
