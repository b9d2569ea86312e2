package comparand.document;

import comparand.document.chart.Chart;
import java.util.List;
import java.util.stream.Collectors;

/** A piece of a section. */
public sealed interface Block {

    <R> R fold(Cases<R> cases);

    /** One function per kind of piece. */
    interface Cases<R> {
        R paragraph(Paragraph paragraph);

        R prose(Prose prose);

        R heading(Heading heading);

        R table(Table table);

        R graph(Graph graph);

        /** Where nothing folds up and down, a ladder is a paragraph. */
        default R ladder(Ladder ladder) {
            return paragraph(ladder.inOneParagraph());
        }
    }

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
            SMALL,
            /** An entry of a list of references; what stands before its tab, if it has one, hangs before the entry. */
            REFERENCE
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.paragraph(this);
        }
    }

    /**
     * Running text whose numbers and references can be found again.
     *
     * @param name unique in the document: letters, digits and underscores; a later run finds the paragraph by it
     */
    record Prose(String name, List<Inline> pieces, Paragraph.Style style) implements Block {

        public Prose {
            pieces = List.copyOf(pieces);
        }

        /** All of it as one text. */
        public String text() {
            return pieces.stream().map(Inline::text).collect(Collectors.joining());
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.prose(this);
        }
    }

    /**
     * A figure.
     *
     * @param caption printed below it; may be empty
     */
    record Graph(Chart chart, String caption) implements Block {

        public Graph {
            caption = NoBreak.joined(caption);
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.graph(this);
        }
    }

    /**
     * The way from print to table of one value, rung by rung.
     *
     * @param name unique in the document: letters, digits, dots, hyphens and underscores; links lead to it
     * @param heading what the value is
     * @param lead where it is from; may be empty
     */
    record Ladder(String name, String heading, String lead, List<Rung> rungs) implements Block {
        public Ladder {
            heading = NoBreak.joined(heading);
            lead = NoBreak.joined(lead);
            rungs = List.copyOf(rungs);
            if (!name.matches("[A-Za-z0-9._-]+")) {
                throw new IllegalArgumentException("the name of a ladder has no blanks, got: " + name);
            }
            if (rungs.isEmpty()) {
                throw new IllegalArgumentException("a ladder has rungs");
            }
        }

        /** All of it as running text. */
        public Paragraph inOneParagraph() {
            var text = new StringBuilder(heading)
                    .append(lead.isEmpty() ? "" : " (" + lead + ")")
                    .append(':');
            for (int i = 0; i < rungs.size(); i++) {
                text.append(" %d. %s".formatted(i + 1, rungs.get(i).inOneLine()));
            }
            return new Paragraph(text.toString(), Paragraph.Style.BODY);
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.ladder(this);
        }
    }

    /**
     * One step.
     *
     * @param kind in a word or two
     * @param formula empty where nothing was computed
     */
    record Rung(String kind, String text, String formula) {
        public Rung {
            text = NoBreak.joined(text);
        }

        String inOneLine() {
            return kind + ": " + text + (formula.isEmpty() ? "" : " [" + formula + "]") + ".";
        }
    }

    /** A heading below that of the section. */
    record Heading(String text) implements Block {

        public Heading {
            text = NoBreak.joined(text);
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.heading(this);
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
        public <R> R fold(Cases<R> cases) {
            return cases.table(this);
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

    /** A note under a table: the mark it is called by in cells, or none where it holds for the whole table, and its text. */
    record Note(String mark, String text) {
        public Note {
            text = NoBreak.joined(text);
        }
    }
}
