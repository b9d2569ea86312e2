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
public final class Works {

    private Works() {}

    /**
     * A source in the fields of a citation.
     *
     * @param revision how a revision is called, such as {@code Revision C}; it stands where books have their edition
     */
    public static Item of(SourceRecord source, Optional<String> revision) {
        var reference = source.reference();
        var fields = new EnumMap<Field, String>(Field.class);
        put(fields, Field.CONTAINER_TITLE, reference.containerTitle());
        put(fields, Field.CONTAINER_TITLE_SHORT, reference.containerTitleShort());
        put(fields, Field.COLLECTION_TITLE, reference.collectionTitle());
        put(fields, Field.VOLUME, reference.volume());
        put(fields, Field.ISSUE, reference.issue());
        put(fields, Field.NUMBER, reference.number());
        put(fields, Field.PAGE, reference.page());
        put(fields, Field.EDITION, reference.edition());
        put(fields, Field.PUBLISHER, reference.publisher());
        put(fields, Field.PUBLISHER_PLACE, reference.publisherPlace());
        put(fields, Field.ISBN, reference.isbn());
        put(fields, Field.DOI, reference.doi());
        put(fields, Field.PMID, reference.pmid());
        put(fields, Field.PMCID, reference.pmcid());
        put(fields, Field.URL, reference.url());
        revision.ifPresent(r -> fields.put(Field.EDITION, r));
        return new Item(
                source.id(),
                reference.type().value(),
                reference.title().value(),
                reference.author().stream().map(Works::author).toList(),
                reference.editor().stream().map(Works::author).toList(),
                issued(reference),
                fields);
    }

    private static void put(Map<Field, String> fields, Field field, Optional<Located<String>> text) {
        text.ifPresent(t -> fields.put(field, t.value()));
    }

    private static Author author(PersonRecord person) {
        return person.literal()
                .map(l -> Author.body(l.value()))
                .orElseGet(() -> new Author(
                        text(person.family()),
                        text(person.given()),
                        text(person.particle()),
                        text(person.droppingParticle()),
                        text(person.suffix()),
                        ""));
    }

    private static String text(Optional<Located<String>> text) {
        return text.map(Located::value).orElse("");
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
