package comparand.read;

import comparand.diag.Span;
import comparand.model.RowSource;
import comparand.model.UnreadableRows;
import java.util.HashSet;
import java.util.List;

/** What a line of headings must be, whatever kind of file it stands in. */
final class Headings {

    private Headings() {}

    /**
     * Refuses a file without headings, and one heading over two columns.
     *
     * @throws UnreadableRows at the heading that stands there a second time
     */
    static void require(List<String> header, boolean declared, RowSource rows) {
        if (header.isEmpty()) {
            throw new UnreadableRows(
                    Span.startOf(rows.file()),
                    declared ? "there is no line of headings" : "this file holds nothing",
                    "put a line of headings and the rows into it, or take it out of `files:`");
        }
        var seen = new HashSet<String>();
        for (int i = 0; i < header.size(); i++) {
            if (!seen.add(header.get(i))) {
                throw new UnreadableRows(
                        rows.heading(i),
                        "the heading `%s` stands over two columns".formatted(header.get(i)),
                        "give each column a heading of its own");
            }
        }
    }
}
