package comparand.intake;

import comparand.document.record.Entry;
import java.util.List;
import java.util.Map;

/** A quantity behind one key, asked for by the workbook only. */
record QuantityPiece(String path, Quantity quantity) implements Piece {

    @Override
    public List<Slot> slots() {
        return List.of(quantity.number(), quantity.unit());
    }

    @Override
    public List<Slot> asked(Answers soFar) {
        return List.of();
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
