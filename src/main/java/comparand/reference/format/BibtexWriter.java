package comparand.reference.format;

import comparand.reference.Field;
import comparand.reference.Name;
import comparand.reference.Reference;
import java.util.List;
import java.util.SortedMap;
import java.util.stream.Collectors;

/** References as BibTeX in UTF-8, keyed by their names; titles stand in a second pair of braces, which keeps their capitals. */
final class BibtexWriter {

    private static final String FORMAT = ReferenceFormat.BIBTEX.word();

    private final StringBuilder out = new StringBuilder();
    private final Reference reference;

    private BibtexWriter(Reference reference) {
        this.reference = reference;
    }

    static String text(SortedMap<String, Reference> references) {
        return references.entrySet().stream()
                .map(e -> new BibtexWriter(e.getValue()).entry(e.getKey()))
                .collect(Collectors.joining("\n"));
    }

    private String entry(String key) {
        var type = reference.type();
        out.append('@').append(BibtexTypes.entry(type)).append('{').append(key).append(",\n");
        names("author", reference.authors());
        line("title", "{{" + Tex.of(reference.title()) + "}}");
        names("editor", reference.editors());
        text(BibtexTypes.container(type), Field.CONTAINER_TITLE);
        text("shortjournal", Field.CONTAINER_TITLE_SHORT);
        text("series", Field.COLLECTION_TITLE);
        date();
        text("volume", Field.VOLUME);
        text("number", RisTypes.isNumbered(type) ? Field.NUMBER : Field.ISSUE);
        reference.field(Field.PAGE).ifPresent(p -> line("pages", "{" + Tex.of(p).replaceAll("(\\{})?-", "--") + "}"));
        text("edition", Field.EDITION);
        text(BibtexTypes.publisher(type), Field.PUBLISHER);
        text("address", Field.PUBLISHER_PLACE);
        text("issn", Field.ISSN);
        text("isbn", Field.ISBN);
        verbatim("doi", Field.DOI);
        verbatim("pmid", Field.PMID);
        verbatim("pmcid", Field.PMCID);
        verbatim("url", Field.URL);
        text("language", Field.LANGUAGE);
        reference.notice().ifPresent(n -> line("note", "{" + Tex.of(StatusNote.of(n)) + "}"));
        reference.kept().stream()
                .filter(k -> k.format().equals(FORMAT) && k.tag().matches("[a-z][a-z0-9_-]*"))
                .filter(k -> !k.tag().matches("year|month|date|url|doi|pmid")
                        && !(k.tag().equals("note") && reference.notice().isPresent()))
                .forEach(k -> line(k.tag(), "{" + Tex.of(k.texts().get(0)) + "}"));
        return out.append("}\n").toString();
    }

    private void date() {
        var year = reference.kept(FORMAT, "year").stream().findFirst();
        year.or(() -> reference.year().map(y -> Integer.toString(y)))
                .ifPresent(y -> line("year", "{" + Tex.of(y) + "}"));
        var parts = reference.issued().map(d -> d.text().split("-", -1)).orElse(new String[0]);
        var month = reference.kept(FORMAT, "month").stream().findFirst();
        if (month.isPresent()) {
            line("month", "{" + Tex.of(month.get()) + "}");
        } else if (parts.length > 1) {
            line("month", Dates.name(Integer.parseInt(parts[1])));
        }
        if (parts.length > 2) {
            line("day", Integer.toString(Integer.parseInt(parts[2])));
        }
    }

    private void names(String field, List<Name> names) {
        if (!names.isEmpty()) {
            line(field, "{" + names.stream().map(BibtexName::text).collect(Collectors.joining(" and ")) + "}");
        }
    }

    private void text(String name, Field field) {
        reference.field(field).ifPresent(t -> line(name, "{" + Tex.of(t) + "}"));
    }

    /** Identifiers and addresses are not prose; braces, which would have to be balanced, are written as addresses write them. */
    private void verbatim(String name, Field field) {
        reference
                .field(field)
                .map(t -> t.replace("{", "%7B").replace("}", "%7D").replace("\\", "%5C"))
                .ifPresent(t -> line(name, "{" + t + "}"));
    }

    private void line(String name, String value) {
        out.append("  ").append(name).append(" = ").append(value).append(",\n");
    }
}
