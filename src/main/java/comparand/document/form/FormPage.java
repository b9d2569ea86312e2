package comparand.document.form;

import java.util.List;
import java.util.function.Function;

/** A sheet that is read from the top, line by line. */
public record FormPage(String name, List<Line> lines) {

    public FormPage {
        lines = List.copyOf(lines);
    }

    /** A line of a page. */
    public sealed interface Line {
        <R> R fold(
                Function<Title, R> title,
                Function<Text, R> text,
                Function<Question, R> question,
                Function<Count, R> count);
    }

    public record Title(String text) implements Line {
        @Override
        public <R> R fold(
                Function<Title, R> title,
                Function<Text, R> text,
                Function<Question, R> question,
                Function<Count, R> count) {
            return title.apply(this);
        }
    }

    public record Text(String text) implements Line {
        @Override
        public <R> R fold(
                Function<Title, R> title,
                Function<Text, R> text,
                Function<Question, R> question,
                Function<Count, R> count) {
            return text.apply(this);
        }
    }

    /** A name with the cell to its right to be filled, or filled already. */
    public record Question(String name, String answer, String help) implements Line {
        @Override
        public <R> R fold(
                Function<Title, R> title,
                Function<Text, R> text,
                Function<Question, R> question,
                Function<Count, R> count) {
            return question.apply(this);
        }
    }

    /** A name with a number that the workbook counts by itself, and what it should be. */
    public record Count(String name, String formula, String should) implements Line {
        @Override
        public <R> R fold(
                Function<Title, R> title,
                Function<Text, R> text,
                Function<Question, R> question,
                Function<Count, R> count) {
            return count.apply(this);
        }
    }
}
