package comparand.intake;

import comparand.document.record.Entry;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** Picture points behind one key, written with semicolons between them, each with the decimal sign of its file. */
record PointsPiece(ListPiece list, boolean needed) implements Piece {

    static PointsPiece needed(String path, Slot slot, Predicate<Answers> matters) {
        return new PointsPiece(new ListPiece(path, slot, matters), true);
    }

    static PointsPiece of(String path, Slot slot, Predicate<Answers> matters) {
        return new PointsPiece(new ListPiece(path, slot, matters), false);
    }

    @Override
    public List<Slot> slots() {
        return list.slots();
    }

    @Override
    public List<Slot> asked(Answers soFar) {
        return list.asked(soFar);
    }

    @Override
    public boolean needs(Slot slot, Answers soFar) {
        return needed;
    }

    @Override
    public void write(Draft draft) {
        draft.answers()
                .get(list.slot())
                .ifPresent(a -> numbers(draft, a, a.text().split(";", -1))
                        .ifPresent(read -> draft.put(list.path(), read, a.at())));
    }

    /** Numbers as the file writes them; one that cannot be read is a finding, and none of them stands. */
    static Optional<Entry.Items> numbers(Draft draft, Answers.Answer answer, String[] typed) {
        var read = List.of(typed).stream()
                .map(String::strip)
                .filter(p -> !p.isEmpty())
                .map(p -> NumberText.read(p, draft.sign()))
                .toList();
        if (read.stream().anyMatch(Optional::isEmpty)) {
            draft.refuse(NumberText.refused(answer));
            return Optional.empty();
        }
        return Optional.of(new Entry.Items(
                read.stream().flatMap(Optional::stream).<Entry>map(Entry::words).toList()));
    }

    @Override
    public void read(Entry.Fields record, Map<Slot, String> cells) {
        list.read(record, cells);
    }

    @Override
    public List<String> paths() {
        return list.paths();
    }
}
