package comparand.intake;

import comparand.document.record.Entry;
import java.util.Optional;

/** What stands in a record at the end of a path of keys. */
final class Paths {

    private Paths() {}

    static Optional<Entry> at(Entry.Fields record, String path) {
        Optional<Entry> here = Optional.of(record);
        for (var key : path.split(Draft.STEP, -1)) {
            here = here.flatMap(e -> e instanceof Entry.Fields f ? f.get(key) : Optional.empty());
        }
        return here;
    }

    static Optional<String> text(Entry.Fields record, String path) {
        return at(record, path).flatMap(e -> e instanceof Entry.Words w ? Optional.of(w.text()) : Optional.empty());
    }
}
