package comparand.intake;

import comparand.document.record.Entry;
import java.util.List;
import java.util.Map;

/** A question at the terminal that decides which others are asked; nothing of it stands in the record or in the workbook. */
record AskedPiece(Slot slot) implements Piece {

    @Override
    public List<Slot> slots() {
        return List.of();
    }

    @Override
    public List<Slot> asked(Answers soFar) {
        return List.of(slot);
    }

    @Override
    public void write(Draft draft) {
        // it only led to other questions
    }

    @Override
    public void read(Entry.Fields record, Map<Slot, String> cells) {
        // see above
    }

    @Override
    public List<String> paths() {
        return List.of();
    }
}
