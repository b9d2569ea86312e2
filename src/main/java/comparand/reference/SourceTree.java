package comparand.reference;

import comparand.document.record.Entry;
import comparand.document.record.Entry.Fields;
import comparand.document.record.Entry.Items;
import comparand.document.record.Field;
import comparand.model.library.SourceKind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The record of a source that has no values yet. */
final class SourceTree {

    private final Proposal proposal;
    private final Reference reference;
    private final LocalDate today;

    SourceTree(Proposal proposal, LocalDate today) {
        this.proposal = proposal;
        this.reference = proposal.found().reference();
        this.today = today;
    }

    Fields record() {
        var fields = new ArrayList<Field>();
        fields.add(Field.of("source", proposal.id()));
        fields.add(Field.of("kind", proposal.kind().word()));
        fields.add(new Field("reference", citation()));
        if (proposal.kind().kind() == SourceKind.INSTRUCTIONS_FOR_USE) {
            revision(reference)
                    .ifPresent(r -> fields.add(new Field(
                            "document",
                            new Fields(List.of(
                                    Field.of("revision", r),
                                    Field.of(
                                            "date",
                                            reference.issued().orElseThrow().text()))))));
        }
        reference.field(comparand.reference.Field.LANGUAGE).ifPresent(l -> fields.add(Field.of("language", l)));
        fields.add(Field.of("funding", "not reported"));
        fields.add(new Field("status", status()));
        fields.add(new Field("values", new Items(List.of())));
        return new Fields(fields);
    }

    /** The revision, if the reference has it and the date that goes with it. */
    static Optional<String> revision(Reference reference) {
        return reference.issued().isEmpty()
                ? Optional.empty()
                : reference.field(comparand.reference.Field.EDITION).flatMap(Revision::read);
    }

    private Fields citation() {
        var fields = new ArrayList<Field>();
        fields.add(Field.of("type", reference.type()));
        fields.add(Field.of("title", reference.title()));
        names(fields, "author", reference.authors());
        names(fields, "editor", reference.editors());
        reference.issued().ifPresent(d -> fields.add(Field.of("issued", d.text())));
        reference.fields().forEach((field, text) -> {
            if (field != comparand.reference.Field.LANGUAGE) {
                fields.add(Field.of(field.key(), text));
            }
        });
        if (!reference.kept().isEmpty()) {
            fields.add(new Field("kept", kept()));
        }
        return new Fields(fields);
    }

    private static void names(List<Field> fields, String key, List<Name> names) {
        if (!names.isEmpty()) {
            fields.add(new Field(
                    key, new Items(names.stream().<Entry>map(SourceTree::name).toList())));
        }
    }

    private static Fields name(Name name) {
        var parts = new ArrayList<Field>();
        put(parts, "family", name.family());
        put(parts, "given", name.given());
        put(parts, "non-dropping-particle", name.particle());
        put(parts, "dropping-particle", name.dropping());
        put(parts, "suffix", name.suffix());
        put(parts, "literal", name.literal());
        return new Fields(parts);
    }

    private static void put(List<Field> fields, String key, String text) {
        if (!text.isEmpty()) {
            fields.add(Field.of(key, text));
        }
    }

    private Fields kept() {
        Map<String, List<Field>> formats = new LinkedHashMap<>();
        reference
                .kept()
                .forEach(k -> formats.computeIfAbsent(k.format(), f -> new ArrayList<>())
                        .add(new Field(k.tag(), texts(k.texts()))));
        return new Fields(formats.entrySet().stream()
                .map(e -> new Field(e.getKey(), new Fields(e.getValue())))
                .toList());
    }

    private static Entry texts(List<String> texts) {
        return texts.size() == 1
                ? Entry.words(texts.get(0))
                : new Items(texts.stream().map(Entry::words).<Entry>map(w -> w).toList());
    }

    private Fields status() {
        var fields = new ArrayList<Field>();
        fields.add(Field.of("state", proposal.state()));
        fields.add(Field.of("checked", today.toString()));
        reference.notice().ifPresent(n -> {
            n.since().ifPresent(d -> fields.add(Field.of("since", d.text())));
            put(fields, "notice", n.text());
        });
        return new Fields(fields);
    }
}
