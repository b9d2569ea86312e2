package comparand.intake;

import comparand.document.record.Entry;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** A bare number behind one key, with the decimal sign of its file. */
record NumberPiece(String path, Slot slot, boolean needed, Predicate<Answers> matters) implements Piece {

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
        draft.number(slot).ifPresent(n -> draft.put(path, n, slot));
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
