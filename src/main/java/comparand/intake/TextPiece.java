package comparand.intake;

import comparand.document.record.Entry;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** A text or a bare number behind one key. */
record TextPiece(String path, Slot slot, boolean needed, Predicate<Answers> matters) implements Piece {

    static TextPiece needed(String path, Slot slot) {
        return new TextPiece(path, slot, true, a -> true);
    }

    static TextPiece of(String path, Slot slot) {
        return new TextPiece(path, slot, false, a -> true);
    }

    static TextPiece of(String path, Slot slot, Predicate<Answers> matters) {
        return new TextPiece(path, slot, false, matters);
    }

    @Override
    public List<Slot> slots() {
        return List.of(slot);
    }

    @Override
    public List<Slot> asked(Answers soFar) {
        return matters.test(soFar) ? slots() : List.of();
    }

    @Override
    public boolean needs(Slot one, Answers soFar) {
        return needed;
    }

    @Override
    public void write(Draft draft) {
        draft.written(slot).ifPresent(t -> draft.put(path, t, slot));
    }

    @Override
    public void read(Entry.Fields record, Map<Slot, String> cells) {
        Paths.text(record, path).ifPresent(t -> cells.put(slot, t));
    }

    @Override
    public List<String> paths() {
        return List.of(path);
    }
}
