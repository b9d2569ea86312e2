package comparand.intake;

import comparand.document.record.Entry;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** A list behind one key, written with semicolons between its members. */
record ListPiece(String path, Slot slot, Predicate<Answers> matters) implements Piece {

    @Override
    public List<Slot> slots() {
        return List.of(slot);
    }

    @Override
    public List<Slot> asked(Answers soFar) {
        return matters.test(soFar) ? slots() : List.of();
    }

    @Override
    public void write(Draft draft) {
        draft.answers().get(slot).ifPresent(a -> draft.put(path, new Entry.Items(members(a.text())), a.at()));
    }

    private static List<Entry> members(String text) {
        return Arrays.stream(text.split(";", -1))
                .map(String::strip)
                .filter(m -> !m.isEmpty())
                .<Entry>map(Entry::words)
                .toList();
    }

    @Override
    public void read(Entry.Fields record, Map<Slot, String> cells) {
        Paths.at(record, path).ifPresent(e -> {
            if (e instanceof Entry.Items items && !items.isEmpty()) {
                cells.put(
                        slot,
                        items.list().stream()
                                .map(m -> m instanceof Entry.Words w ? w.text() : "")
                                .collect(Collectors.joining("; ")));
            }
        });
    }

    @Override
    public List<String> paths() {
        return List.of(path);
    }
}
