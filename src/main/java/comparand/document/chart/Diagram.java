package comparand.document.chart;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Boxes one below the other, joined by arrows; from a box another may lead to what leaves there, at its side.
 *
 * @param id see {@link Chart#id()}
 * @param message see {@link Chart#message()}
 * @param alternative see {@link Chart#alternative()}
 * @param steps from top to bottom; an arrow leads from each to the next
 * @param notes see {@link Chart#notes()}
 */
public record Diagram(String id, String message, String alternative, List<Step> steps, List<String> notes)
        implements Chart {

    public Diagram {
        steps = List.copyOf(steps);
        notes = List.copyOf(notes);
        Chart.require(id, message, alternative);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("a diagram has a step");
        }
    }

    /**
     * One box of the way down.
     *
     * @param phase said above the box where a new part of the way begins; empty elsewhere
     * @param leaves what leaves at this box, in a box of its own beside it
     */
    public record Step(String phase, Card card, Optional<Card> leaves) {}

    /** A box: a line of text for each thing it says. */
    public record Card(List<String> lines) {
        public Card {
            lines = List.copyOf(lines);
            if (lines.isEmpty() || lines.stream().anyMatch(String::isBlank)) {
                throw new IllegalArgumentException("a box has lines, and none is blank");
            }
        }
    }

    @Override
    public Diagram withNotes(List<String> others) {
        return new Diagram(id, message, alternative, steps, others);
    }

    @Override
    public <R> R fold(Function<Plot, R> plot, Function<Diagram, R> diagram) {
        return diagram.apply(this);
    }
}
