package comparand.intake;

import comparand.document.record.Entry;
import java.util.List;
import java.util.Map;

/**
 * One part of a record, and the slots it is made from. Both directions stand side by side: what {@link #write} puts into a
 * record, {@link #read} takes out of it into the same slots.
 */
interface Piece {

    /** All its slots, in the order in which they are filled. */
    List<Slot> slots();

    /** Those of its slots that make sense after what was answered so far. */
    default List<Slot> asked(Answers soFar) {
        return slots();
    }

    /** Whether a record without this answer would be stopped. */
    default boolean needs(Slot slot, Answers soFar) {
        return false;
    }

    /** Puts its part into a record, if anything was answered. */
    void write(Draft draft);

    /** What its slots hold for a record that is there already. */
    void read(Entry.Fields record, Map<Slot, String> cells);

    /** The paths of its part: what a record may lose when its slots are emptied. */
    List<String> paths();
}
