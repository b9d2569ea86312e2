package comparand.reference.format;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.reference.Doi;
import comparand.reference.Field;
import comparand.reference.Found;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * RIS, after "RIS Format Specifications" (Research Information Systems; versions of 2001 and 2011): {@code TY} first,
 * {@code ER} last, free order between, a line without a tag goes on with the one before. The blanks around the hyphen are
 * often one too few in files found in the wild, which harms nothing.
 */
final class RisReader {

    private static final Pattern TAG = Pattern.compile("\\s{0,3}([A-Z][A-Z0-9]) {1,2}-(?: |$)(.*)");
    private static final String[] CONTAINER = {"T2", "JF", "JO", "BT", "JA", "J2", "J1"};
    private static final String[] CONTAINER_SHORT = {"J2", "JA", "J1", "JO"};

    private final String file;
    private final List<Diagnostic> findings;

    RisReader(String file, List<Diagnostic> findings) {
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
            if (!tag.matches()) {
                goOn(open, line);
                continue;
            }
            var name = tag.group(1);
            var span = tag.group(2).isBlank()
                    ? line.whole()
                    : line.part(tag.start(2), tag.group(2).stripTrailing().length());
            if (name.equals("TY") && !open.isEmpty()) {
                note(
                        "reference-not-closed",
                        line.whole(),
                        "a reference begins here before `ER` closed the one of line %d".formatted(start.line()),
                        "tags could go to the wrong reference; the earlier one was taken to end here",
                        "put a line `ER  - ` before this one");
                records.add(new TaggedRecord(start, open));
                open.clear();
            }
            if (name.equals("ER")) {
                if (!open.isEmpty()) {
                    records.add(new TaggedRecord(start, open));
                    open.clear();
                }
                continue;
            }
            if (open.isEmpty()) {
                start = line.whole();
                withType(name, line);
            }
            open.add(new Tagged(name, tag.group(2), span));
        }
        if (!open.isEmpty()) {
            note(
                    "reference-not-closed",
                    start,
                    "the last reference is not closed by `ER`",
                    "the file may have been cut off, and fields may be missing",
                    "export it again, or end it with a line `ER  - `");
            records.add(new TaggedRecord(start, open));
        }
        return records;
    }

    private void withType(String tag, Line line) {
        if (!tag.equals("TY")) {
            note(
                    "reference-without-type",
                    line.whole(),
                    "a reference begins here with `%s` and not with `TY`".formatted(tag),
                    "the type of the work is not known; it is read as a document",
                    "begin it with a line such as `TY  - JOUR`");
        }
    }

    private void goOn(List<Tagged> open, Line line) {
        if (line.text().isBlank()) {
            return;
        }
        if (open.isEmpty()) {
            note(
                    "line-outside-reference",
                    line.whole(),
                    "`%s` stands outside of any reference".formatted(Plain.text(line.text())),
                    "it was not read",
                    "take it out, or put it between `TY` and `ER`");
            return;
        }
        int last = open.size() - 1;
        var before = open.get(last);
        open.set(
                last, new Tagged(before.tag(), before.text() + " " + line.text().strip(), before.span()));
    }

    private Draft reference(TaggedRecord tags) {
        var draft = new Draft(ReferenceFormat.RIS, tags.at(), findings);
        tags.take("TY").ifPresent(t -> type(draft, t));
        boolean isWhole = RisTypes.isWhole(draft.type());
        tags.take("TI", "T1", "CT", "BT").ifPresent(t -> {
            draft.title(t.text());
            tags.dropSame(t.text(), "TI", "T1", "CT");
        });
        tags.takeAll("AU", "A1").forEach(t -> CommaName.read(t.text()).ifPresent(draft::author));
        tags.takeAll("ED").forEach(t -> CommaName.read(t.text()).ifPresent(draft::editor));
        if (isWhole) {
            tags.take("T2", "T3").ifPresent(t -> draft.set(Field.COLLECTION_TITLE, t.text()));
        } else {
            container(draft, tags);
            tags.take("T3").ifPresent(t -> draft.set(Field.COLLECTION_TITLE, t.text()));
        }
        tags.take("VL").ifPresent(t -> draft.set(Field.VOLUME, t.text()));
        tags.take("IS", "CP")
                .ifPresent(t -> draft.set(RisTypes.isNumbered(draft.type()) ? Field.NUMBER : Field.ISSUE, t.text()));
        pages(draft, tags);
        tags.take("ET").ifPresent(t -> draft.set(Field.EDITION, t.text()));
        tags.take("PB").ifPresent(t -> draft.set(Field.PUBLISHER, t.text()));
        tags.take("CY", "PP").ifPresent(t -> draft.set(Field.PUBLISHER_PLACE, t.text()));
        tags.take("LA").ifPresent(t -> draft.set(Field.LANGUAGE, comparand.reference.Languages.two(t.text())));
        tags.takeAll("SN").forEach(t -> SerialNumbers.read(draft, "SN", t.text()));
        identifiers(draft, tags);
        RisDates.read(draft, tags);
        for (var note : tags.takeAll("N1")) {
            StatusNote.read(note.text()).ifPresentOrElse(draft::notice, () -> draft.keep("N1", note.text()));
        }
        // abstracts belong to their publishers
        tags.takeAll("AB", "N2", "ID");
        tags.left().forEach(t -> draft.keep(t.tag(), t.text()));
        return draft;
    }

    private void type(Draft draft, Tagged tagged) {
        RisTypes.type(tagged.text().strip()).ifPresentOrElse(draft::type, () -> {
            draft.keep("TY", tagged.text());
            draft.note(
                    "type-unknown",
                    tagged.span(),
                    "`%s` is not a type of RIS".formatted(Plain.text(tagged.text())),
                    "the type decides how a work is cited; it is read as a document",
                    "write one of the specification, such as `TY  - JOUR`");
        });
    }

    private static void container(Draft draft, TaggedRecord tags) {
        tags.take(CONTAINER).ifPresent(t -> {
            draft.set(Field.CONTAINER_TITLE, t.text());
            tags.dropSame(t.text(), CONTAINER);
        });
        tags.take(CONTAINER_SHORT).ifPresent(t -> {
            draft.set(Field.CONTAINER_TITLE_SHORT, t.text());
            tags.dropSame(t.text(), CONTAINER_SHORT);
        });
    }

    private static void pages(Draft draft, TaggedRecord tags) {
        var first = tags.take("SP").map(t -> Plain.text(t.text()));
        var last = tags.take("EP").map(t -> Plain.text(t.text()));
        first.or(() -> last)
                .ifPresent(p -> draft.set(
                        Field.PAGE,
                        Pages.read(last.filter(l -> first.isPresent() && !l.equals(p) && !p.matches(".*[-\u2013].*"))
                                .map(l -> p + "-" + l)
                                .orElse(p))));
    }

    private static void identifiers(Draft draft, TaggedRecord tags) {
        tags.take("DO").ifPresent(t -> draft.doi("DO", t.text(), t.span()));
        for (var address : tags.takeAll("UR", "L3")) {
            var url = Plain.text(address.text());
            var name = Doi.isAddress(url) ? Doi.read(url) : java.util.Optional.<String>empty();
            if (name.isPresent() && !draft.has(Field.DOI)) {
                draft.set(Field.DOI, name.get());
            } else if (name.filter(n -> draft.get(Field.DOI).map(Doi::key).equals(java.util.Optional.of(Doi.key(n))))
                    .isEmpty()) {
                if (address.tag().equals("UR") && !draft.has(Field.URL)) {
                    draft.set(Field.URL, url);
                } else {
                    draft.keep(address.tag(), url);
                }
            }
        }
        boolean fromPubMed = tags.left().stream()
                .anyMatch(t -> (t.tag().equals("DB") || t.tag().equals("DP"))
                        && t.text().matches("(?i).*(?:pubmed|medline|nlm).*"));
        if (fromPubMed) {
            tags.take("AN").ifPresent(t -> draft.pmid("AN", t.text(), t.span()));
            tags.dropSame(RisWriter.PUBMED, "DB");
        }
        tags.left().stream()
                .filter(t -> t.tag().equals("C2") && t.text().strip().matches("PMC\\d+"))
                .findFirst()
                .ifPresent(t -> {
                    draft.set(Field.PMCID, t.text());
                    tags.remove(t);
                });
    }

    private void note(String code, Span span, String message, String why, String fix) {
        findings.add(Diagnostic.note(code, span, message, why, fix));
    }
}
