package comparand.reference;

import comparand.diag.Located;
import comparand.model.library.PersonRecord;
import comparand.model.library.SourceRecord;
import comparand.model.library.SourceState;
import comparand.model.library.StatusRecord;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A source of a library as a reference: what an export writes of it. */
public final class Recorded {

    private Recorded() {}

    public static Reference reference(SourceRecord source) {
        var record = source.reference();
        var fields = new EnumMap<Field, String>(Field.class);
        put(fields, Field.CONTAINER_TITLE, record.containerTitle());
        put(fields, Field.CONTAINER_TITLE_SHORT, record.containerTitleShort());
        put(fields, Field.COLLECTION_TITLE, record.collectionTitle());
        put(fields, Field.VOLUME, record.volume());
        put(fields, Field.ISSUE, record.issue());
        put(fields, Field.NUMBER, record.number());
        put(fields, Field.PAGE, record.page());
        put(fields, Field.EDITION, record.edition());
        put(fields, Field.PUBLISHER, record.publisher());
        put(fields, Field.PUBLISHER_PLACE, record.publisherPlace());
        put(fields, Field.ISSN, record.issn());
        put(fields, Field.ISBN, record.isbn());
        put(fields, Field.DOI, record.doi());
        put(fields, Field.PMID, record.pmid());
        put(fields, Field.PMCID, record.pmcid());
        put(fields, Field.URL, record.url());
        put(fields, Field.LANGUAGE, source.language());
        source.document()
                .ifPresent(d -> fields.putIfAbsent(
                        Field.EDITION, Revision.text(d.revision().value())));
        return new Reference(
                record.type().value(),
                record.title().value(),
                record.author().stream().flatMap(p -> name(p).stream()).toList(),
                record.editor().stream().flatMap(p -> name(p).stream()).toList(),
                record.issued().map(Located::value),
                fields,
                notice(source.status()),
                record.kept().stream()
                        .flatMap(f -> f.value().stream()
                                .map(t -> new Kept(
                                        f.key().value(),
                                        t.key().value(),
                                        texts(t.value().list()))))
                        .toList());
    }

    private static List<String> texts(List<Located<String>> texts) {
        return texts.stream().map(Located::value).toList();
    }

    private static void put(Map<Field, String> fields, Field field, Optional<Located<String>> text) {
        text.map(Located::value).filter(t -> !t.isBlank()).ifPresent(t -> fields.put(field, t));
    }

    private static Optional<Name> name(PersonRecord person) {
        var family = text(person.family());
        var literal = text(person.literal());
        if (!literal.isBlank()) {
            return Optional.of(Name.body(literal));
        }
        return family.isBlank()
                ? Optional.of(text(person.given())).filter(g -> !g.isBlank()).map(Name::body)
                : Optional.of(new Name(
                        family,
                        text(person.given()),
                        text(person.particle()),
                        text(person.droppingParticle()),
                        text(person.suffix()),
                        ""));
    }

    private static String text(Optional<Located<String>> text) {
        return text.map(Located::value).orElse("");
    }

    private static Optional<Notice> notice(StatusRecord status) {
        var state = status.state().value();
        return state == SourceState.RETRACTED || state == SourceState.CONCERN || state == SourceState.CORRECTED
                ? Optional.of(
                        new Notice(state, text(status.notice()), status.since().map(Located::value)))
                : Optional.empty();
    }
}
