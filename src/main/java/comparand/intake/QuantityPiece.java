package comparand.intake;

import comparand.document.record.Entry;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** A quantity behind one key: its number in one slot, its unit in another. */
record QuantityPiece(String path, Quantity quantity, Predicate<Answers> matters) implements Piece {

    @Override
    public List<Slot> slots() {
        return List.of(quantity.number(), quantity.unit());
    }

    @Override
    public List<Slot> asked(Answers soFar) {
        return matters.test(soFar) ? quantity.asked(soFar) : List.of();
    }

    @Override
    public void write(Draft draft) {
        quantity.in(draft).ifPresent(q -> draft.put(path, q, quantity.number()));
    }

    @Override
    public void read(Entry.Fields record, Map<Slot, String> cells) {
        Paths.text(record, path).ifPresent(t -> quantity.split(t, cells));
    }

    @Override
    public List<String> paths() {
        return List.of(path);
    }
}
