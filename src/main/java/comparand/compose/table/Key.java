package comparand.compose.table;

import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.model.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The key to the words and signs of a document. */
public final class Key {

    private Key() {}

    private static final List<String> SIGNS =
            List.of("marks", "either", "other", "locator", "interval", "cautious", "margin", "difference", "adjusted");

    /** What only the columns of a workbook need. */
    private static final List<String> IN_WORKBOOK = List.of("narrow", "most");

    /** Of tables that are printed. */
    public static Table ofTable(Run run, Cells cells) {
        return table(run, cells, SIGNS);
    }

    static Table ofWorkbook(Run run, Cells cells) {
        return table(
                run, cells, Stream.of(SIGNS, IN_WORKBOOK).flatMap(List::stream).toList());
    }

    private static Table table(Run run, Cells cells, List<String> signs) {
        var words = run.words();
        var rows = new ArrayList<List<Cell>>();
        for (var standing : Standing.values()) {
            var name = words.say("standing." + standing.name());
            var key = standing.name().charAt(0)
                    + standing.name().substring(1).toLowerCase(Locale.ROOT).replace('_', '-');
            rows.add(List.of(Cell.strong(name), Cell.words(words.say("key." + key))));
        }
        for (var sign : signs) {
            rows.add(List.of(
                    Cell.strong(words.say("key." + sign + ".name")),
                    Cell.words(words.say("key." + sign, "m", String.valueOf(run.familySize())))));
        }
        rows.add(List.of(Cell.strong(words.say("not-applicable")), Cell.words(words.say("key.NA"))));
        rows.add(List.of(Cell.strong(words.say("not-reported-short")), Cell.words(words.say("key.NR"))));
        return new Table("Key", "", List.of(cells.name("col.word", 30), cells.text("col.means", 90)), rows, List.of());
    }
}
