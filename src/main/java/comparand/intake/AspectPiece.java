package comparand.intake;

import comparand.document.record.Entry;
import comparand.metric.Role;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A respect in which definitions of the metric differ: which of its words the source follows, with commas between several. */
record AspectPiece(String path, Slot slot, Function<Answers, Optional<Role>> role) implements Piece {

    @Override
    public List<Slot> slots() {
        return List.of(slot);
    }

    @Override
    public List<Slot> asked(Answers soFar) {
        return role.apply(soFar).isPresent() ? slots() : List.of();
    }

    @Override
    public boolean needs(Slot one, Answers soFar) {
        return role.apply(soFar).filter(Role::asksForReport).isPresent();
    }

    @Override
    public void write(Draft draft) {
        draft.answers().get(slot).ifPresent(a -> {
            var words = Arrays.stream(a.text().split(",", -1))
                    .map(String::strip)
                    .filter(w -> !w.isEmpty())
                    .<Entry>map(Entry::words)
                    .toList();
            if (!words.isEmpty()) {
                draft.put(path, words.size() == 1 ? words.get(0) : new Entry.Items(words), a.at());
            }
        });
    }

    @Override
    public void read(Entry.Fields record, Map<Slot, String> cells) {
        Paths.at(record, path).ifPresent(e -> cells.put(slot, text(e)));
    }

    private static String text(Entry entry) {
        return entry.fold(
                Entry.Words::text,
                items -> items.list().stream().map(AspectPiece::text).collect(Collectors.joining(", ")),
                fields -> "");
    }

    @Override
    public List<String> paths() {
        return List.of(path);
    }
}
