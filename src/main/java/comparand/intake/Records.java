package comparand.intake;

import comparand.document.record.Entry;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Parts of records as trees. */
final class Records {

    private Records() {}

    /** The values of a source. */
    static List<Entry.Fields> values(Entry.Fields source) {
        return source.get(SourcePieces.VALUES)
                .map(v -> v instanceof Entry.Items items
                        ? items.list().stream()
                                .flatMap(e -> e instanceof Entry.Fields f ? Stream.of(f) : Stream.empty())
                                .toList()
                        : List.<Entry.Fields>of())
                .orElse(List.of());
    }

    /** What the slots of pieces hold for a record. */
    static Map<Slot, String> cells(List<Piece> pieces, Entry.Fields record) {
        var cells = new LinkedHashMap<Slot, String>();
        pieces.forEach(p -> p.read(record, cells));
        return cells;
    }
}
