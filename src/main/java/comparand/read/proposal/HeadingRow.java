package comparand.read.proposal;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Which row of a table holds its headings: the first that is as wide as the table, has different words in all its cells, and no
 * number.
 *
 * @param line counted from 1
 * @param seen from what it was concluded
 */
record HeadingRow(int line, String seen) {

    private static final Pattern NUMBER = Pattern.compile("[+\\-−]?\\d++(?:[.,]\\d++)*+");

    /** A row of the table with its line. */
    record Candidate(int line, List<String> cells) {}

    static Optional<HeadingRow> among(List<Candidate> rows) {
        int width = rows.stream().mapToInt(r -> filled(r.cells)).max().orElse(0);
        return rows.stream()
                // a column without a heading is found when the file is read
                .filter(r -> filled(r.cells) >= Math.max(1, width - 1) && isHeading(r.cells))
                .findFirst()
                .map(r -> new HeadingRow(
                        r.line, "the first row with %d different words and no number".formatted(filled(r.cells))));
    }

    private static int filled(List<String> cells) {
        return (int) cells.stream().filter(c -> !c.isEmpty()).count();
    }

    private static boolean isHeading(List<String> cells) {
        var seen = new HashSet<String>();
        return cells.stream()
                .filter(c -> !c.isEmpty())
                .allMatch(c -> seen.add(c) && !NUMBER.matcher(c).matches());
    }
}
