package comparand.model;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.function.Function;

/**
 * One cell of a raw data file. A separated-values file has texts and blanks only; a workbook also stores numbers, dates and
 * errors as such, and what it stores is never read again from a text.
 */
public sealed interface DataCell {

    /**
     * The cell in letters: as written, a number with a decimal point, a date as year-month-day, an error by its sign; empty
     * for a blank. Missing codes, codes and rules for rows are compared with it.
     */
    String text();

    <R> R fold(
            Function<? super Text, R> text,
            Function<? super Figure, R> figure,
            Function<? super When, R> when,
            Function<? super Fault, R> fault,
            Function<? super Blank, R> blank);

    default boolean isBlank() {
        return this instanceof Blank;
    }

    static DataCell blank() {
        return Blank.ONLY;
    }

    /** A text, stripped; blank if nothing is left of it. */
    static DataCell of(String written) {
        var text = written.strip();
        return text.isEmpty() ? blank() : new Text(text);
    }

    /** What somebody typed, letter by letter. */
    record Text(String text) implements DataCell {
        public Text {
            if (text.isBlank()) {
                throw new IllegalArgumentException("a text has letters; see DataCell.of");
            }
        }

        @Override
        public <R> R fold(
                Function<? super Text, R> text,
                Function<? super Figure, R> figure,
                Function<? super When, R> when,
                Function<? super Fault, R> fault,
                Function<? super Blank, R> blank) {
            return text.apply(this);
        }
    }

    /**
     * A number a workbook stores; the declared decimal sign has no say in it.
     *
     * @param value the shortest decimal number that is stored as these bits
     */
    record Figure(BigDecimal value) implements DataCell {
        public Figure {
            requireNonNull(value, "value");
        }

        @Override
        public String text() {
            return value.toPlainString();
        }

        @Override
        public <R> R fold(
                Function<? super Text, R> text,
                Function<? super Figure, R> figure,
                Function<? super When, R> when,
                Function<? super Fault, R> fault,
                Function<? super Blank, R> blank) {
            return figure.apply(this);
        }
    }

    /** A date, a time of day, or both, that a workbook stores as such. */
    record When(Optional<LocalDate> day, Optional<LocalTime> time) implements DataCell {
        public When {
            if (day.isEmpty() && time.isEmpty()) {
                throw new IllegalArgumentException("a day, a time, or both");
            }
        }

        @Override
        public String text() {
            return day.map(LocalDate::toString).orElse("")
                    + (day.isPresent() && time.isPresent() ? " " : "")
                    + time.map(LocalTime::toString).orElse("");
        }

        @Override
        public <R> R fold(
                Function<? super Text, R> text,
                Function<? super Figure, R> figure,
                Function<? super When, R> when,
                Function<? super Fault, R> fault,
                Function<? super Blank, R> blank) {
            return when.apply(this);
        }
    }

    /** What stands in a workbook where a formula failed: {@code #N/A}, {@code #DIV/0!}. */
    record Fault(String text) implements DataCell {
        public Fault {
            if (text.isBlank()) {
                throw new IllegalArgumentException("an error has a sign");
            }
        }

        @Override
        public <R> R fold(
                Function<? super Text, R> text,
                Function<? super Figure, R> figure,
                Function<? super When, R> when,
                Function<? super Fault, R> fault,
                Function<? super Blank, R> blank) {
            return fault.apply(this);
        }
    }

    /** Nothing. */
    record Blank() implements DataCell {
        private static final Blank ONLY = new Blank();

        @Override
        public String text() {
            return "";
        }

        @Override
        public <R> R fold(
                Function<? super Text, R> text,
                Function<? super Figure, R> figure,
                Function<? super When, R> when,
                Function<? super Fault, R> fault,
                Function<? super Blank, R> blank) {
            return blank.apply(this);
        }
    }
}
