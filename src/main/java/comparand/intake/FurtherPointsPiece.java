package comparand.intake;

import comparand.diag.Diagnostic;
import comparand.document.record.Entry;
import comparand.document.record.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Where further people placed a mark: {@code CD 358 357.5; EF 356}, each with initials and the picture points they read. */
record FurtherPointsPiece(String path, Slot slot, Predicate<Answers> matters) implements Piece {

    private static final Pattern ONE = Pattern.compile("(\\D*?[^\\d\\s])((?:\\s++[+\\-−]?\\d[\\d.,]*+)++)");

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
        draft.answers().get(slot).ifPresent(a -> {
            var people = new ArrayList<Entry>();
            for (var part : a.text().split(";", -1)) {
                if (part.isBlank()) {
                    continue;
                }
                var m = ONE.matcher(part.strip());
                if (!m.matches()) {
                    draft.refuse(Diagnostic.stop(
                            "points-unreadable",
                            a.at(),
                            "`%s` does not say who read it, and where".formatted(part.strip()),
                            "how far two readers are apart is part of the error of the reading",
                            "write initials and picture points, as in CD 358 357.5; EF 356"));
                    return;
                }
                var points = PointsPiece.numbers(draft, a, m.group(2).strip().split("\\s+", -1));
                if (points.isEmpty()) {
                    return;
                }
                people.add(new Entry.Fields(
                        List.of(Field.of("by", m.group(1).strip()), new Field("points", points.get()))));
            }
            draft.put(path, new Entry.Items(people), a.at());
        });
    }

    @Override
    public void read(Entry.Fields record, Map<Slot, String> cells) {
        Paths.at(record, path).ifPresent(e -> {
            if (e instanceof Entry.Items items && !items.isEmpty()) {
                cells.put(
                        slot,
                        items.list().stream().map(FurtherPointsPiece::text).collect(Collectors.joining("; ")));
            }
        });
    }

    private static String text(Entry entry) {
        if (!(entry instanceof Entry.Fields one)) {
            return "";
        }
        var points = one.get("points").orElse(Entry.Fields.NONE) instanceof Entry.Items items
                ? items.list().stream()
                        .map(p -> p instanceof Entry.Words w ? " " + w.text() : "")
                        .collect(Collectors.joining())
                : "";
        return one.text("by").orElse("") + points;
    }

    @Override
    public List<String> paths() {
        return List.of(path);
    }
}
