package comparand.document;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

/** What stands in a table cell. There are no blank cells: what is missing is said in words. */
public sealed interface Cell {

    /** As printed. */
    String shown();

    /** Marks of the notes the cell calls, such as {@code a, c}; may be empty. */
    String marks();

    <R> R fold(Cases<R> cases);

    /** One function per kind of cell. */
    interface Cases<R> {
        R words(Words words);

        R figure(Figure figure);

        R formula(Formula formula);

        R day(Day day);

        R link(Link link);
    }

    /** Text. */
    record Words(String text, String marks, Weight weight, Frame frame) implements Cell {

        /** A frame about the text, which repeats what its word says. */
        public enum Frame {
            NONE,
            SOLID,
            DOUBLE,
            DASHED,
            DOTTED
        }

        public Words(String text, String marks, Weight weight) {
            this(text, marks, weight, Frame.NONE);
        }

        /** How the text is set. */
        public enum Weight {
            PLAIN,
            STRONG
        }

        public Words {
            requireNonNull(marks, "marks");
            requireNonNull(weight, "weight");
            requireNonNull(frame, "frame");
            if (text.isBlank()) {
                throw new IllegalArgumentException("a cell is never blank: say what is missing");
            }
        }

        @Override
        public String shown() {
            return text;
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.words(this);
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
        public <R> R fold(Cases<R> cases) {
            return cases.figure(this);
        }
    }

    /**
     * What a workbook works out anew when somebody changes what it is made from.
     *
     * @param pieces in order: text of the formula, and the cells it speaks of
     * @param result what it gives as the document stands: a figure, or words where there is no number
     * @param decimals of the number it gives, now or later
     */
    record Formula(List<Piece> pieces, Cell result, int decimals) implements Cell {

        public Formula {
            pieces = List.copyOf(pieces);
            if (!(result instanceof Figure) && !(result instanceof Words)) {
                throw new IllegalArgumentException("a formula gives a figure or words");
            }
        }

        /** A piece of a formula. */
        public sealed interface Piece permits Sign, Quoted, At {}

        /** Operators, functions and constants, as spreadsheets write them in English: {@code *}, {@code SUM(}. */
        public record Sign(String text) implements Piece {}

        /** A text that the formula compares with or gives; whatever stands in it is never worked out. */
        public record Quoted(String text) implements Piece {}

        /**
         * A cell, or with a second row a column of cells, of a table of the document.
         *
         * @param row counted from 0 below the headings
         * @param toRow the last row; the same as {@code row} for one cell
         */
        public record At(String table, int row, int toRow, int column) implements Piece {}

        @Override
        public String shown() {
            return result.shown();
        }

        @Override
        public String marks() {
            return result.marks();
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.formula(this);
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
        public <R> R fold(Cases<R> cases) {
            return cases.day(this);
        }
    }

    /**
     * Text that leads to another place of the document.
     *
     * @param target the name of a section or of a ladder
     */
    record Link(String text, String target) implements Cell {
        @Override
        public String shown() {
            return text;
        }

        @Override
        public String marks() {
            return "";
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.link(this);
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

    static Cell framed(String text, Words.Frame frame) {
        return new Words(NoBreak.joined(text), "", Words.Weight.PLAIN, frame);
    }

    /** Text that a reader may copy and look up, letter by letter: a name or an id. */
    static Cell verbatim(String text) {
        return new Words(text, "", Words.Weight.PLAIN);
    }
}
