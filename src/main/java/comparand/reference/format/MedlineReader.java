package comparand.reference.format;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.reference.Field;
import comparand.reference.Found;
import comparand.reference.Languages;
import comparand.reference.Name;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The display format of MEDLINE as PubMed exports it ({@code .nbib}), after "MEDLINE/PubMed Data Element (Field) Descriptions"
 * (National Library of Medicine): a tag of up to four letters, a hyphen, a blank; a line that begins with blanks goes on with
 * the one before; a blank line or a further {@code PMID} begins the next record.
 */
final class MedlineReader {

    private static final Pattern TAG = Pattern.compile("([A-Z][A-Z0-9]{1,3})\\s{0,2}-(?: |$)(.*)");
    private static final Pattern IDENTIFIER = Pattern.compile("(.*\\S)\\s*\\[(doi|pii|pmc|pmcid|bookaccession)\\]");
    private static final Pattern ISSN =
            Pattern.compile("(\\d{4}-\\d{3}[\\dXx])(?:\\s*\\((?:Print|Electronic|Linking)\\))?");
    private static final Pattern ISBN = Pattern.compile("([\\d -]{9,16}[\\dXx])");

    private final String file;
    private final List<Diagnostic> findings;

    MedlineReader(String file, List<Diagnostic> findings) {
        this.file = file;
        this.findings = findings;
    }

    List<Found> read(String text) {
        var found = new ArrayList<Found>();
        records(Lines.of(file, text)).forEach(r -> reference(r).found().ifPresent(found::add));
        return found;
    }

    private List<TaggedRecord> records(List<Line> lines) {
        var records = new ArrayList<TaggedRecord>();
        var open = new ArrayList<Tagged>();
        Span start = Span.startOf(file);
        for (var line : lines) {
            var tag = TAG.matcher(line.text());
            boolean isNext = tag.matches()
                    && tag.group(1).equals("PMID")
                    && open.stream().anyMatch(t -> t.tag().equals("PMID"));
            if ((line.text().isBlank() || isNext) && !open.isEmpty()) {
                records.add(new TaggedRecord(start, open));
                open.clear();
            }
            if (tag.matches()) {
                start = open.isEmpty() ? line.whole() : start;
                open.add(new Tagged(
                        tag.group(1),
                        tag.group(2),
                        tag.group(2).isBlank()
                                ? line.whole()
                                : line.part(
                                        tag.start(2),
                                        tag.group(2).stripTrailing().length())));
            } else if (!line.text().isBlank()) {
                goOn(open, line);
            }
        }
        if (!open.isEmpty()) {
            records.add(new TaggedRecord(start, open));
        }
        return records;
    }

    private void goOn(List<Tagged> open, Line line) {
        if (open.isEmpty() || !Character.isWhitespace(line.text().charAt(0))) {
            findings.add(Diagnostic.note(
                    "line-outside-reference",
                    line.whole(),
                    "`%s` has no tag and is not indented by six blanks".formatted(Plain.text(line.text())),
                    "it could belong to the line before or to nothing, so it was not read",
                    "indent it by six blanks if it goes on with the line before, or take it out"));
            return;
        }
        int last = open.size() - 1;
        var before = open.get(last);
        open.set(
                last, new Tagged(before.tag(), before.text() + " " + line.text().strip(), before.span()));
    }

    private Draft reference(TaggedRecord tags) {
        var draft = new Draft(ReferenceFormat.NBIB, tags.at(), findings);
        tags.take("PMID").ifPresent(t -> draft.pmid("PMID", t.text(), t.span()));
        MedlineStanding.read(draft, tags);
        titles(draft, tags);
        names(draft, tags);
        tags.take("VI").ifPresent(t -> draft.set(Field.VOLUME, t.text()));
        tags.take("IP").ifPresent(t -> draft.set(Field.ISSUE, t.text()));
        tags.take("PG").ifPresent(t -> draft.set(Field.PAGE, Pages.read(t.text())));
        tags.take("EN").ifPresent(t -> draft.set(Field.EDITION, t.text()));
        tags.take("PB").ifPresent(t -> draft.set(Field.PUBLISHER, t.text()));
        tags.take("PL").ifPresent(t -> draft.set(Field.PUBLISHER_PLACE, t.text()));
        tags.take("LA").ifPresent(t -> draft.set(Field.LANGUAGE, Languages.two(t.text())));
        tags.take("PMC").ifPresent(t -> draft.set(Field.PMCID, t.text()));
        tags.takeAll("IS").forEach(t -> number(draft, Field.ISSN, ISSN, t));
        tags.takeAll("ISBN").forEach(t -> number(draft, Field.ISBN, ISBN, t));
        identifiers(draft, tags);
        MedlineDates.read(draft, tags);
        for (var note : tags.takeAll("GN")) {
            StatusNote.read(note.text()).ifPresentOrElse(draft::notice, () -> draft.keep("GN", note.text()));
        }
        // abstracts belong to their publishers
        tags.takeAll("AB", "OAB", "CI", "OCI");
        tags.left().forEach(t -> draft.keep(t.tag(), t.text()));
        return draft;
    }

    private static void titles(Draft draft, TaggedRecord tags) {
        var title = tags.take("TI");
        var book = tags.take("BTI");
        tags.take("CTI").ifPresent(t -> draft.set(Field.COLLECTION_TITLE, unstopped(t.text())));
        // works in other languages may have their own title alone
        title.or(() -> book).or(() -> tags.take("TT")).ifPresent(t -> draft.title(unstopped(t.text())));
        if (title.isPresent()) {
            book.ifPresent(t -> draft.set(Field.CONTAINER_TITLE, unstopped(t.text())));
        }
        var journal = tags.take("JT", "TA");
        journal.filter(t -> !draft.has(Field.CONTAINER_TITLE))
                .ifPresent(t -> draft.set(Field.CONTAINER_TITLE, t.text()));
        tags.take("TA").ifPresent(t -> draft.set(Field.CONTAINER_TITLE_SHORT, t.text()));
        draft.type(type(draft, tags, title.isPresent(), book.isPresent(), journal.isPresent()));
    }

    /** The publication type that says no more than the type of the work does is taken out. */
    private static String type(Draft draft, TaggedRecord tags, boolean hasTitle, boolean hasBook, boolean hasJournal) {
        if (hasBook) {
            takeKind(tags, hasTitle ? MedlineWriter.CHAPTER : MedlineWriter.BOOK);
            return hasTitle ? "chapter" : "book";
        }
        if (takeKind(tags, MedlineWriter.CHAPTER)) {
            return "chapter";
        }
        if (takeKind(tags, MedlineWriter.PREPRINT)) {
            return "article";
        }
        if (takeKind(tags, MedlineWriter.CONGRESS)) {
            return "paper-conference";
        }
        boolean isArticle = takeKind(tags, MedlineWriter.ARTICLE);
        return isArticle || hasJournal || draft.has(Field.PMID) ? "article-journal" : "document";
    }

    private static boolean takeKind(TaggedRecord tags, String kind) {
        var said = tags.left().stream()
                .filter(t -> t.tag().equals("PT") && t.text().strip().equalsIgnoreCase(kind))
                .findFirst();
        said.ifPresent(tags::remove);
        return said.isPresent();
    }

    /** MEDLINE ends a title with a full stop unless it ends with another mark. */
    private static String unstopped(String text) {
        var plain = Plain.text(text);
        return plain.endsWith(".") ? plain.substring(0, plain.length() - 1).strip() : plain;
    }

    /** Authors and bodies in the order of the file; a short form that has its full name beside it says nothing new. */
    private void names(Draft draft, TaggedRecord tags) {
        var names = tags.takeAll("FAU", "AU", "CN", "FED", "ED");
        var full = names.stream()
                .filter(t -> t.tag().startsWith("F"))
                .flatMap(t -> MedlineName.full(Plain.text(t.text())).stream())
                .toList();
        for (var tagged : names) {
            var text = Plain.text(tagged.text());
            if (text.matches("(?i)et\\.? al\\.?")) {
                cut(tagged);
                continue;
            }
            var name = switch (tagged.tag()) {
                case "CN" -> Optional.of(text).filter(t -> !t.isEmpty()).map(Name::body);
                case "FAU", "FED" -> MedlineName.full(text);
                default -> MedlineName.brief(text).filter(n -> full.stream().noneMatch(f -> isShortOf(n, f)));
            };
            name.ifPresent(tagged.tag().endsWith("ED") ? draft::editor : draft::author);
        }
    }

    private static boolean isShortOf(Name brief, Name full) {
        var initials = brief.initials();
        return brief.last().equalsIgnoreCase(full.last())
                && (initials.isEmpty()
                        || full.initials().isEmpty()
                        || initials.charAt(0) == full.initials().charAt(0));
    }

    private void cut(Tagged tagged) {
        findings.add(Diagnostic.note(
                "authors-cut",
                tagged.span(),
                "the list of authors ends with `%s`".formatted(Plain.text(tagged.text())),
                "the others are not known, and the list of references would look whole",
                "add the other authors to the record"));
    }

    private static void number(Draft draft, Field field, Pattern form, Tagged tagged) {
        var number = form.matcher(Plain.text(tagged.text()));
        if (number.matches() && !draft.has(field)) {
            draft.set(field, number.group(1));
            if (!number.group(1).equals(Plain.text(tagged.text()))) {
                draft.keep(tagged.tag(), tagged.text());
            }
        } else {
            draft.keep(tagged.tag(), tagged.text());
        }
    }

    /** Article and location identifiers name their kind in brackets: {@code 10.5555/a.1 [doi]}. */
    private static void identifiers(Draft draft, TaggedRecord tags) {
        for (var tagged : tags.takeAll("LID", "AID")) {
            var id = IDENTIFIER.matcher(Plain.text(tagged.text()));
            boolean isDoi = id.matches() && id.group(2).toLowerCase(Locale.ROOT).equals("doi");
            if (!isDoi) {
                draft.keep(tagged.tag(), tagged.text());
            } else if (!draft.has(Field.DOI)) {
                draft.doi(tagged.tag(), id.group(1), tagged.span());
            } else if (!draft.get(Field.DOI).equals(Optional.of(id.group(1)))) {
                draft.keep(tagged.tag(), tagged.text());
            }
        }
    }
}
