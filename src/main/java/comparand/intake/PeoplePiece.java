package comparand.intake;

import comparand.document.record.Entry;
import comparand.document.record.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Authors in order, as {@code Ardley, J.; Penrith, S.}: family and given name with a comma, persons with a semicolon between
 * them. What has no comma, or stands in quotation marks, is the name of a body. Particles and suffixes follow in brackets behind
 * their keys, as {@code Berg, J. [non-dropping-particle: van der]}.
 */
record PeoplePiece(String path, Slot slot) implements Piece {

    private static final Pattern ONE = Pattern.compile("\\s*(?:\"([^\"]*)\"|([^;]*))\\s*(?:;|$)");

    private static final Set<String> NAMES = Set.of("family", "given", "literal");
    private static final Pattern MORE = Pattern.compile("\\s*\\[([a-z-]+): ([^\\]]*)\\]");

    @Override
    public List<Slot> slots() {
        return List.of(slot);
    }

    @Override
    public void write(Draft draft) {
        draft.answers().get(slot).ifPresent(a -> {
            var people = new ArrayList<Entry>();
            var m = ONE.matcher(a.text());
            while (m.lookingAt() && m.end() > m.start()) {
                if (m.group(1) != null) {
                    people.add(body(m.group(1)));
                } else if (!m.group(2).isBlank()) {
                    people.add(person(m.group(2).strip()));
                }
                m.region(m.end(), a.text().length());
            }
            draft.put(path, new Entry.Items(people), a.at());
        });
    }

    private static Entry person(String text) {
        var more = new ArrayList<Field>();
        var m = MORE.matcher(text);
        while (m.find()) {
            more.add(Field.of(m.group(1), m.group(2)));
        }
        if (more.isEmpty()) {
            return named(text);
        }
        var fields =
                new ArrayList<>(named(MORE.matcher(text).replaceAll("").strip()).list());
        fields.addAll(more);
        return new Entry.Fields(fields);
    }

    private static Entry.Fields named(String name) {
        int comma = name.indexOf(',');
        if (comma < 0) {
            return body(name);
        }
        var family = Field.of("family", name.substring(0, comma).strip());
        var given = name.substring(comma + 1).strip();
        return new Entry.Fields(given.isEmpty() ? List.of(family) : List.of(family, Field.of("given", given)));
    }

    private static Entry.Fields body(String name) {
        return new Entry.Fields(List.of(Field.of("literal", name)));
    }

    @Override
    public void read(Entry.Fields record, Map<Slot, String> cells) {
        Paths.at(record, path).ifPresent(e -> {
            if (e instanceof Entry.Items items && !items.isEmpty()) {
                cells.put(slot, items.list().stream().map(PeoplePiece::text).collect(Collectors.joining("; ")));
            }
        });
    }

    private static String text(Entry entry) {
        if (!(entry instanceof Entry.Fields person)) {
            return "";
        }
        return plain(person)
                + person.list().stream()
                        .filter(f -> !NAMES.contains(f.key()))
                        .map(f -> " [%s: %s]"
                                .formatted(f.key(), person.text(f.key()).orElse("")))
                        .collect(Collectors.joining());
    }

    private static String plain(Entry.Fields person) {
        return person.text("literal")
                .map(l -> l.contains(",") || l.contains(";") ? "\"" + l + "\"" : l)
                .orElseGet(() -> person.text("family").orElse("") + ", "
                        + person.text("given").orElse(""))
                .strip();
    }

    @Override
    public List<String> paths() {
        return List.of(path);
    }
}
