package comparand.document;

import java.util.List;
import java.util.function.Function;

/** A piece of a section. */
public sealed interface Block {

    <R> R fold(Function<Paragraph, R> paragraph, Function<Heading, R> heading, Function<Table, R> table);

    /** Running text. */
    record Paragraph(String text, Style style) implements Block {

        public Paragraph {
            text = NoBreak.joined(text);
        }

        /** How much weight a paragraph has. */
        public enum Style {
            BODY,
            /** One of a list of points. */
            POINT,
            /** A caution or a lesser remark. */
            SMALL
        }

        @Override
        public <R> R fold(Function<Paragraph, R> paragraph, Function<Heading, R> heading, Function<Table, R> table) {
            return paragraph.apply(this);
        }
    }

    /** A heading below that of the section. */
    record Heading(String text) implements Block {

        public Heading {
            text = NoBreak.joined(text);
        }

        @Override
        public <R> R fold(Function<Paragraph, R> paragraph, Function<Heading, R> heading, Function<Table, R> table) {
            return heading.apply(this);
        }
    }

    /**
     * A table with its notes.
     *
     * @param id unique in the document, letters and digits only
     * @param caption one line that makes the table stand alone; may be empty where the section's heading says it
     * @param notes in the order of their marks
     * @param onPaper how many columns, from the left, are set when a sheet is printed; the others are for the screen
     */
    record Table(String id, String caption, List<Column> columns, List<List<Cell>> rows, List<Note> notes, int onPaper)
            implements Block {

        /** A table all of whose columns are printed. */
        public Table(String id, String caption, List<Column> columns, List<List<Cell>> rows, List<Note> notes) {
            this(id, caption, columns, rows, notes, columns.size());
        }

        public Table {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
            notes = List.copyOf(notes);
            if (!id.matches("[A-Za-z][A-Za-z0-9]*")) {
                throw new IllegalArgumentException("a table id is letters and digits, got: " + id);
            }
            if (onPaper < 1 || onPaper > columns.size()) {
                throw new IllegalArgumentException("a table is printed with 1 to all of its columns, got " + onPaper);
            }
            for (var row : rows) {
                if (row.size() != columns.size()) {
                    throw new IllegalArgumentException(
                            "table %s has %d cells under %d headings".formatted(id, row.size(), columns.size()));
                }
            }
        }

        @Override
        public <R> R fold(Function<Paragraph, R> paragraph, Function<Heading, R> heading, Function<Table, R> table) {
            return table.apply(this);
        }
    }

    /**
     * A column.
     *
     * @param width in characters of the body text: sheets use it as it is, pages share their width out by it
     * @param names whether its cells name their row, for readers that announce row headings
     */
    record Column(String heading, double width, Align align, boolean names) {

        public Column {
            if (heading.isBlank() || !(width > 0)) {
                throw new IllegalArgumentException("a column has a heading and a width");
            }
        }
    }

    /** Where text stands in a column. */
    enum Align {
        LEFT,
        RIGHT
    }

    /** A note under a table: the mark it is called by in cells, and its text. */
    record Note(String mark, String text) {
        public Note {
            text = NoBreak.joined(text);
        }
    }
}
