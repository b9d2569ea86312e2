package comparand.document.chart;

import java.util.List;
import java.util.function.Function;

/** An axis: of numbers, or of rows that have names. */
public sealed interface Axis {

    /** Where it begins, in the coordinates of points. */
    double from();

    /** Where it ends; always more than where it begins. */
    double to();

    <R> R fold(Function<Scale, R> scale, Function<Rows, R> rows);

    /**
     * Of numbers, linear.
     *
     * @param title what is measured, with its unit
     * @param ticks labelled as they are to be printed
     */
    record Scale(String title, double from, double to, List<Tick> ticks) implements Axis {

        public Scale {
            ticks = List.copyOf(ticks);
            if (!(from < to) || !Double.isFinite(from) || !Double.isFinite(to)) {
                throw new IllegalArgumentException(
                        "an axis goes up from a number to another: %s %s".formatted(from, to));
            }
        }

        @Override
        public <R> R fold(Function<Scale, R> scale, Function<Rows, R> rows) {
            return scale.apply(this);
        }
    }

    /**
     * Of rows with names, from the top (or left): row i has its middle at i, counted from 0, and half a unit of room to
     * either side.
     */
    record Rows(List<String> names) implements Axis {

        public Rows {
            names = List.copyOf(names);
            if (names.isEmpty()) {
                throw new IllegalArgumentException("an axis of rows has rows");
            }
        }

        @Override
        public double from() {
            return -0.5;
        }

        @Override
        public double to() {
            return names.size() - 0.5;
        }

        @Override
        public <R> R fold(Function<Scale, R> scale, Function<Rows, R> rows) {
            return rows.apply(this);
        }
    }

    /** A place on an axis of numbers, and how it is printed. */
    record Tick(double at, String label) {}
}
