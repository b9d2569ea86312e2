package comparand.compose.manuscript;

import comparand.cite.Item;
import comparand.cite.Item.Author;
import comparand.cite.Item.Field;
import comparand.diag.Located;
import comparand.model.library.PersonRecord;
import comparand.model.library.ReferenceRecord;
import comparand.model.library.SourceRecord;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Sources as works that can be cited. */
final class Works {

    private Works() {}

    /** @param revision how a revision is called, such as {@code Revision C}; it stands where books have their edition */
    static Item of(SourceRecord source, Optional<String> revision) {
        var reference = source.reference();
        var fields = new EnumMap<Field, String>(Field.class);
        put(fields, Field.CONTAINER_TITLE, reference.containerTitle());
        put(fields, Field.VOLUME, reference.volume());
        put(fields, Field.ISSUE, reference.issue());
        put(fields, Field.PAGE, reference.page());
        put(fields, Field.PUBLISHER, reference.publisher());
        put(fields, Field.DOI, reference.doi());
        put(fields, Field.PMID, reference.pmid());
        revision.ifPresent(r -> fields.put(Field.EDITION, r));
        return new Item(
                source.id(),
                reference.type().value(),
                reference.title().value(),
                reference.author().stream().map(Works::author).toList(),
                issued(reference),
                fields);
    }

    private static void put(Map<Field, String> fields, Field field, Optional<Located<String>> text) {
        text.ifPresent(t -> fields.put(field, t.value()));
    }

    private static Author author(PersonRecord person) {
        return person.literal()
                .map(l -> Author.body(l.value()))
                .orElseGet(() -> Author.person(
                        person.family().map(Located::value).orElse(""),
                        person.given().map(Located::value).orElse("")));
    }

    private static List<Integer> issued(ReferenceRecord reference) {
        return reference
                .issued()
                .map(i -> Arrays.stream(i.value().text().split("-"))
                        .map(Integer::valueOf)
                        .toList())
                .orElse(List.of());
    }
}
