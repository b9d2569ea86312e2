package comparand.reference.format;

import comparand.diag.Diagnostic;
import comparand.reference.Doi;
import comparand.reference.Field;
import comparand.reference.Found;
import comparand.reference.Languages;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** BibTeX entries as references; fields that have no place in a citation are kept by their names. */
final class BibtexReader {

    private static final Set<String> IN_SOMETHING = Set.of("inbook", "incollection", "inproceedings", "conference");

    private final List<Diagnostic> findings;
    private final List<BibtexEntry> entries;
    private final Map<String, BibtexEntry> byKey = new HashMap<>();

    BibtexReader(String file, String text, List<Diagnostic> findings) {
        this.findings = findings;
        this.entries = new BibtexScanner(file, text, findings).entries();
        entries.forEach(e -> byKey.putIfAbsent(e.key().toLowerCase(Locale.ROOT), e));
    }

    List<Found> read() {
        var found = new ArrayList<Found>();
        entries.forEach(e -> new Entry(e).reference().found().ifPresent(found::add));
        return found;
    }

    /** One entry while its fields are taken out. */
    private final class Entry {

        private final BibtexEntry entry;
        private final Draft draft;
        private final Set<String> unread = new LinkedHashSet<>();
        private final Map<String, BibtexEntry.Field> fields = new HashMap<>();

        Entry(BibtexEntry entry) {
            this.entry = entry;
            this.draft = new Draft(ReferenceFormat.BIBTEX, entry.at(), findings);
            entry.fields().forEach(this::put);
            take("crossref").ifPresent(this::inherit);
        }

        private void put(BibtexEntry.Field field) {
            if (fields.putIfAbsent(field.name(), field) == null) {
                unread.add(field.name());
            }
        }

        /** Missing fields are those of the entry that is named; its title is that of the book this one stands in. */
        private void inherit(BibtexEntry.Field crossref) {
            var parent = byKey.get(crossref.tex().strip().toLowerCase(Locale.ROOT));
            if (parent == null || parent.equals(entry)) {
                draft.keep("crossref", crossref.tex());
                draft.note(
                        "crossref-missing",
                        crossref.span(),
                        "there is no entry `%s` in this file".formatted(Plain.text(crossref.tex())),
                        "fields that stand only there are missing from this reference",
                        "export that entry too, or write its fields here");
                return;
            }
            boolean isPart = IN_SOMETHING.contains(entry.type());
            for (var field : parent.fields()) {
                boolean isTitle = field.name().equals("title");
                if (isTitle && isPart) {
                    put(new BibtexEntry.Field("booktitle", field.tex(), field.months(), field.span()));
                }
                if (!(isTitle && isPart && !entry.type().equals("inbook"))
                        && !field.name().equals("crossref")
                        && !field.name().equals("note")) {
                    put(field);
                }
            }
        }

        Draft reference() {
            BibtexTypes.type(entry.type()).ifPresentOrElse(draft::type, this::unknownType);
            var type = draft.type();
            take("title").ifPresent(f -> draft.title(plain(f)));
            names("author").forEach(n -> BibtexName.read(n, this::quiet).ifPresent(draft::author));
            names("editor").forEach(n -> BibtexName.read(n, this::quiet).ifPresent(draft::editor));
            var container = BibtexTypes.container(type);
            text(Field.CONTAINER_TITLE, container, container.equals("journal") ? "journaltitle" : "journal");
            text(Field.CONTAINER_TITLE_SHORT, "shortjournal");
            text(Field.COLLECTION_TITLE, "series");
            text(Field.VOLUME, "volume");
            text(RisTypes.isNumbered(type) ? Field.NUMBER : Field.ISSUE, "number", "issue");
            take("pages").ifPresent(f -> draft.set(Field.PAGE, Pages.read(plain(f))));
            text(Field.EDITION, "edition");
            text(Field.PUBLISHER, BibtexTypes.publisher(type), "publisher", "institution", "school", "organization");
            text(Field.PUBLISHER_PLACE, "address", "location");
            text(Field.ISSN, "issn");
            text(Field.ISBN, "isbn");
            take("language")
                    .or(() -> take("langid"))
                    .ifPresent(f -> draft.set(Field.LANGUAGE, Languages.two(plain(f))));
            identifiers();
            BibtexDates.read(draft, this::take);
            take("note")
                    .ifPresent(f -> StatusNote.read(plain(f))
                            .ifPresentOrElse(draft::notice, () -> draft.keep("note", plain(f))));
            // abstracts belong to their publishers; the key only sorts
            take("abstract");
            take("key");
            List.copyOf(unread).forEach(n -> take(n).ifPresent(f -> draft.keep(n, plain(f))));
            return draft;
        }

        private void unknownType() {
            draft.note(
                    "type-unknown",
                    entry.at(),
                    "`@%s` is not a type of BibTeX".formatted(entry.type()),
                    "the type decides how a work is cited; it is read as a document",
                    "write one that is, such as `@article`");
        }

        private void identifiers() {
            take("doi").ifPresent(f -> draft.doi("doi", verbatim(f.tex()), f.span()));
            take("pmid").ifPresent(f -> draft.pmid("pmid", verbatim(f.tex()), f.span()));
            take("pmcid").ifPresent(f -> draft.set(Field.PMCID, verbatim(f.tex())));
            take("url").ifPresent(f -> {
                var url = Plain.text(verbatim(f.tex()));
                var name = Doi.isAddress(url) ? Doi.read(url) : Optional.<String>empty();
                if (name.isEmpty()) {
                    draft.set(Field.URL, url);
                } else if (!draft.has(Field.DOI)) {
                    draft.set(Field.DOI, name.get());
                } else if (!draft.get(Field.DOI).map(Doi::key).equals(name.map(Doi::key))) {
                    draft.keep("url", url);
                }
            });
        }

        private Optional<BibtexEntry.Field> take(String name) {
            return unread.remove(name) ? Optional.ofNullable(fields.get(name)) : Optional.empty();
        }

        /** The first that is there; what stands under the other names is kept. */
        private void text(Field field, String... names) {
            for (var name : names) {
                if (!draft.has(field)) {
                    take(name).ifPresent(f -> draft.set(field, plain(f)));
                }
            }
        }

        private List<String> names(String field) {
            var list = take(field);
            var names = new ArrayList<>(list.map(f -> BibtexName.split(f.tex())).orElse(List.of()));
            if (names.removeIf(n -> n.equalsIgnoreCase("others"))) {
                draft.note(
                        "authors-cut",
                        list.orElseThrow().span(),
                        "`%s` ends with `and others`".formatted(field),
                        "the others are not known, and the list of references would look whole",
                        "add the other names to the record");
            }
            return names;
        }

        private String plain(BibtexEntry.Field field) {
            var unknown = new LinkedHashSet<String>();
            var plain = Tex.plain(field.tex(), unknown::add);
            if (!unknown.isEmpty()) {
                draft.note(
                        "command-unknown",
                        field.span(),
                        "`%s` holds commands of TeX that are not known here: %s"
                                .formatted(field.name(), String.join(", ", unknown)),
                        "they stay in the text as they are, and would be printed",
                        "write the sign itself in the record");
            }
            return plain;
        }

        private String quiet(String tex) {
            return Tex.plain(tex, command -> {});
        }
    }

    /** Identifiers and addresses are no prose: braces and escapes go, everything else stays. */
    private static String verbatim(String tex) {
        return tex.replace("\\textasciitilde{}", "~")
                .replace("\\textasciitilde", "~")
                .replaceAll("\\\\url\\s*(?=\\{)", "")
                .replaceAll("\\\\([^A-Za-z])", "$1")
                .replaceAll("[{}]", "")
                .strip();
    }
}
