package comparand.document;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.function.Function;

/** What stands in a table cell. There are no blank cells: what is missing is said in words. */
public sealed interface Cell {

    /** As printed. */
    String shown();

    /** Marks of the notes the cell calls, such as {@code a, c}; may be empty. */
    String marks();

    <R> R fold(Function<Words, R> words, Function<Figure, R> figure, Function<Day, R> day, Function<Link, R> link);

    /** Text. */
    record Words(String text, String marks, Weight weight) implements Cell {

        /** How the text is set. */
        public enum Weight {
            PLAIN,
            STRONG
        }

        public Words {
            requireNonNull(marks, "marks");
            requireNonNull(weight, "weight");
            if (text.isBlank()) {
                throw new IllegalArgumentException("a cell is never blank: say what is missing");
            }
        }

        @Override
        public String shown() {
            return text;
        }

        @Override
        public <R> R fold(
                Function<Words, R> words, Function<Figure, R> figure, Function<Day, R> day, Function<Link, R> link) {
            return words.apply(this);
        }
    }

    /**
     * A number: the unrounded value, and how it is printed.
     *
     * @param printed the value as rounded for print; its scale is the number of printed decimals
     * @param before printed before the digits, such as an opening bracket or a sign
     * @param after printed behind them, such as a closing bracket
     * @param decimalSign of the document's language
     */
    record Figure(double value, BigDecimal printed, String before, String after, char decimalSign, String marks)
            implements Cell {

        public Figure {
            requireNonNull(printed, "printed");
            requireNonNull(before, "before");
            requireNonNull(after, "after");
            requireNonNull(marks, "marks");
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("a figure is a finite number, got " + value);
            }
        }

        @Override
        public String shown() {
            return before + digits(printed, decimalSign) + after;
        }

        /** With a true minus sign. */
        public static String digits(BigDecimal printed, char decimalSign) {
            var text = printed.abs().toPlainString().replace('.', decimalSign);
            return printed.signum() < 0 ? "\u2212" + text : text;
        }

        @Override
        public <R> R fold(
                Function<Words, R> words, Function<Figure, R> figure, Function<Day, R> day, Function<Link, R> link) {
            return figure.apply(this);
        }
    }

    /** A date. */
    record Day(LocalDate date) implements Cell {
        @Override
        public String shown() {
            return date.toString();
        }

        @Override
        public String marks() {
            return "";
        }

        @Override
        public <R> R fold(
                Function<Words, R> words, Function<Figure, R> figure, Function<Day, R> day, Function<Link, R> link) {
            return day.apply(this);
        }
    }

    /** Text that leads to another section of the document. */
    record Link(String text, String section) implements Cell {
        @Override
        public String shown() {
            return text;
        }

        @Override
        public String marks() {
            return "";
        }

        @Override
        public <R> R fold(
                Function<Words, R> words, Function<Figure, R> figure, Function<Day, R> day, Function<Link, R> link) {
            return link.apply(this);
        }
    }

    static Cell words(String text) {
        return words(text, "");
    }

    static Cell words(String text, String marks) {
        return new Words(NoBreak.joined(text), marks, Words.Weight.PLAIN);
    }

    static Cell strong(String text) {
        return new Words(NoBreak.joined(text), "", Words.Weight.STRONG);
    }

    /** Text that a reader may copy and look up, letter by letter: a name or an id. */
    static Cell verbatim(String text) {
        return new Words(text, "", Words.Weight.PLAIN);
    }
}
