package comparand.reference;

import comparand.model.library.PartialDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A published work as a file of references or a record tells it.
 *
 * @param type a CSL item type, such as {@code article-journal}
 * @param title without a full stop behind it; never blank
 * @param authors in their order
 * @param fields other texts that are known, none of them blank
 * @param notice the gravest thing said of its standing
 * @param kept what has no place in a citation, in the order of the file
 */
public record Reference(
        String type,
        String title,
        List<Name> authors,
        List<Name> editors,
        Optional<PartialDate> issued,
        Map<Field, String> fields,
        Optional<Notice> notice,
        List<Kept> kept) {

    public Reference {
        authors = List.copyOf(authors);
        editors = List.copyOf(editors);
        kept = List.copyOf(kept);
        var known = new EnumMap<Field, String>(Field.class);
        known.putAll(fields);
        fields = Collections.unmodifiableMap(known);
        if (title.isBlank() || type.isBlank() || fields.values().stream().anyMatch(String::isBlank)) {
            throw new IllegalArgumentException("a reference has a type and a title, and no field that says nothing");
        }
    }

    public Optional<String> field(Field field) {
        return Optional.ofNullable(fields.get(field));
    }

    public Optional<Integer> year() {
        return issued.map(d -> d.earliest().getYear());
    }

    public Optional<Name> firstAuthor() {
        return authors.stream().findFirst();
    }

    /** What was kept under a tag of a format. */
    public List<String> kept(String format, String tag) {
        return kept.stream()
                .filter(k -> k.format().equals(format) && k.tag().equals(tag))
                .flatMap(k -> k.texts().stream())
                .toList();
    }

    /** As one line, for people: {@code Ardley J, Penrith S. Title. Journal. 2023;11:41-50}. */
    public String brief() {
        var out = new StringBuilder();
        if (!authors.isEmpty()) {
            out.append(String.join(
                            ", ", authors.stream().limit(3).map(Name::brief).toList()))
                    .append(authors.size() > 3 ? ", et al. " : ". ");
        }
        out.append(title).append(title.matches(".*[.?!]") ? "" : ".");
        field(Field.CONTAINER_TITLE)
                .or(() -> field(Field.PUBLISHER))
                .ifPresent(c -> out.append(' ').append(c).append('.'));
        issued.ifPresent(d -> out.append(' ').append(d));
        field(Field.VOLUME).ifPresent(v -> out.append(';').append(v));
        field(Field.ISSUE).ifPresent(i -> out.append('(').append(i).append(')'));
        field(Field.PAGE).ifPresent(p -> out.append(':').append(p));
        return out.toString().replaceAll("\\.$", "");
    }
}
