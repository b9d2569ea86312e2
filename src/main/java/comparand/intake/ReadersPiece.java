package comparand.intake;

import comparand.diag.Diagnostic;
import comparand.document.record.Entry;
import comparand.document.record.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Who read a value and when: {@code AB 2026-09-14; CD 2026-09-20 agrees yes; CD 2026-09-20 agrees no found 94.0 %}. Left empty,
 * the reader and the day of the whole form stand for it.
 */
final class ReadersPiece implements Piece {

    static final String PATH = "read";

    private static final Pattern ONE =
            Pattern.compile("(.+?) (\\d{4}-\\d{2}-\\d{2})(?: agrees (yes|no))?(?: found (.+))?");

    private static final Slot SLOT = Slot.text(
            "Readers",
            "read by",
            "Who read it, and when?",
            "Empty: the reader and day of the sheet Start. Otherwise as AB 2026-09-14; CD 2026-09-20 agrees no found 94.0 %");

    private final Reader reader;

    ReadersPiece(Reader reader) {
        this.reader = reader;
    }

    @Override
    public List<Slot> slots() {
        return List.of(SLOT);
    }

    /** At the terminal the reader is asked for once. */
    @Override
    public List<Slot> asked(Answers soFar) {
        return List.of();
    }

    @Override
    public void write(Draft draft) {
        var answer = draft.answers().get(SLOT);
        if (answer.isEmpty()) {
            draft.put(
                    PATH,
                    new Entry.Items(List.of(
                            new Entry.Fields(List.of(Field.of("by", reader.by()), Field.of("on", reader.on()))))),
                    draft.answers().start());
            return;
        }
        var readings = new ArrayList<Entry>();
        for (var part : answer.get().text().split(";", -1)) {
            if (part.isBlank()) {
                continue;
            }
            var m = ONE.matcher(part.strip());
            if (!m.matches()) {
                draft.refuse(Diagnostic.stop(
                        "reader-unreadable",
                        answer.get().at(),
                        "`%s` does not say who read the value and when".formatted(part.strip()),
                        "a value nobody read cannot be asked about",
                        "write initials and day, as in AB 2026-09-14; or leave the cell empty"));
                return;
            }
            var fields = new ArrayList<Field>(List.of(Field.of("by", m.group(1)), Field.of("on", m.group(2))));
            if (m.group(3) != null) {
                fields.add(Field.of("agrees", m.group(3)));
            }
            if (m.group(4) != null) {
                fields.add(Field.of("found", m.group(4)));
            }
            readings.add(new Entry.Fields(fields));
        }
        draft.put(PATH, new Entry.Items(readings), answer.get().at());
    }

    @Override
    public void read(Entry.Fields record, Map<Slot, String> cells) {
        record.get(PATH).ifPresent(e -> {
            if (e instanceof Entry.Items items && !items.isEmpty()) {
                cells.put(SLOT, items.list().stream().map(ReadersPiece::text).collect(Collectors.joining("; ")));
            }
        });
    }

    private static String text(Entry entry) {
        if (!(entry instanceof Entry.Fields one)) {
            return "";
        }
        return one.text("by").orElse("")
                + " " + one.text("on").orElse("")
                + one.text("agrees").map(a -> " agrees " + a).orElse("")
                + one.text("found").map(f -> " found " + f).orElse("");
    }

    /** Where nobody was named and others have read it before: they, and the reader of the form unless among them. */
    static Entry.Fields joined(Optional<Entry.Fields> before, Entry.Fields value, Answers answers) {
        var earlier = before.flatMap(b -> b.get(PATH));
        if (answers.get(SLOT).isPresent()
                || !(earlier.orElse(value) instanceof Entry.Items was)
                || !(value.get(PATH).orElse(value) instanceof Entry.Items now)) {
            return value;
        }
        boolean isAmong = was.list().stream().anyMatch(r -> isSame(r, now.list().get(0)));
        return value.with(
                PATH,
                isAmong
                        ? was
                        : new Entry.Items(Stream.concat(was.list().stream(), now.list().stream())
                                .toList()));
    }

    /** The readings of a value with one more, which takes the place of one by the same reader on the same day. */
    static Entry.Items with(Entry.Fields value, Entry.Fields reading) {
        var others = value.get(PATH).orElse(value) instanceof Entry.Items was
                ? was.list().stream().filter(r -> !isSame(r, reading))
                : Stream.<Entry>empty();
        return new Entry.Items(Stream.concat(others, Stream.of(reading)).toList());
    }

    private static boolean isSame(Entry a, Entry b) {
        return a instanceof Entry.Fields x
                && b instanceof Entry.Fields y
                && x.text("by").equals(y.text("by"))
                && x.text("on").equals(y.text("on"));
    }

    @Override
    public List<String> paths() {
        return List.of(PATH);
    }
}
