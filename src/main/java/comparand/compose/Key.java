package comparand.compose;

import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.model.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The key to the words and signs of a document. */
final class Key {

    private Key() {}

    static Table table(Run run, Cells cells) {
        var words = run.words();
        var rows = new ArrayList<List<Cell>>();
        for (var standing : Standing.values()) {
            var name = words.say("standing." + standing.name());
            var key = standing.name().charAt(0)
                    + standing.name().substring(1).toLowerCase(Locale.ROOT).replace('_', '-');
            rows.add(List.of(Cell.strong(name), Cell.words(words.say("key." + key))));
        }
        for (var sign :
                List.of("marks", "either", "other", "locator", "interval", "margin", "difference", "adjusted")) {
            rows.add(List.of(
                    Cell.strong(words.say("key." + sign + ".name")),
                    Cell.words(words.say("key." + sign, "m", String.valueOf(run.familySize())))));
        }
        rows.add(List.of(Cell.strong(words.say("not-applicable")), Cell.words(words.say("key.NA"))));
        rows.add(List.of(Cell.strong(words.say("not-reported-short")), Cell.words(words.say("key.NR"))));
        return new Table("Key", "", List.of(cells.name("col.word", 30), cells.text("col.means", 90)), rows, List.of());
    }
}
