package comparand.simulation;

import java.util.Arrays;
import java.util.stream.Collectors;

/** A table of the report; the first columns hold words, the others numbers. */
final class Table {

    private final StringBuilder text = new StringBuilder();

    Table(String title, String before, int words, String... headings) {
        text.append("\n## ").append(title).append("\n\n").append(before).append("\n\n");
        row((Object[]) headings);
        text.append('|')
                .append("---|".repeat(words))
                .append("--:|".repeat(headings.length - words))
                .append('\n');
    }

    void row(Object... cells) {
        text.append(Arrays.stream(cells).map(String::valueOf).collect(Collectors.joining(" | ", "| ", " |\n")));
    }

    String text() {
        return text.toString();
    }
}
