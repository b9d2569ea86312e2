package comparand.reference.format;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.model.library.PartialDate;
import comparand.reference.Doi;
import comparand.reference.Field;
import comparand.reference.Found;
import comparand.reference.Kept;
import comparand.reference.Name;
import comparand.reference.Notice;
import comparand.reference.Reference;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A reference while its fields are gathered. */
final class Draft {

    /** As long as a text of a record may be, and far longer than any abstract. */
    private static final int LONGEST = 20_000;

    private final ReferenceFormat format;
    private final Span at;
    private final List<Diagnostic> findings;
    private final List<Name> authors = new ArrayList<>();
    private final List<Name> editors = new ArrayList<>();
    private final Map<Field, String> fields = new EnumMap<>(Field.class);
    private final Map<String, List<String>> kept = new LinkedHashMap<>();
    private final List<Notice> notices = new ArrayList<>();
    private String type = "document";
    private String title = "";
    private Optional<PartialDate> issued = Optional.empty();

    Draft(ReferenceFormat format, Span at, List<Diagnostic> findings) {
        this.format = format;
        this.at = at;
        this.findings = findings;
    }

    void type(String type) {
        this.type = type;
    }

    String type() {
        return type;
    }

    void title(String text) {
        title = fitting(text);
    }

    void author(Name name) {
        named(name, authors);
    }

    void editor(Name name) {
        named(name, editors);
    }

    private void named(Name name, List<Name> names) {
        int length =
                name.family().length() + name.given().length() + name.literal().length();
        if (length <= LONGEST) {
            names.add(name);
        } else {
            cut(length, "it was left out, for no name is that long");
        }
    }

    /** Fit for a record, and no longer than a record allows. */
    private String fitting(String text) {
        var plain = Plain.text(text);
        if (plain.length() <= LONGEST) {
            return plain;
        }
        cut(plain.length(), "it was cut there, and what stood behind is not in the record");
        return plain.substring(0, Character.isHighSurrogate(plain.charAt(LONGEST - 1)) ? LONGEST - 1 : LONGEST)
                .strip();
    }

    private void cut(int length, String what) {
        note(
                "field-too-long",
                at,
                "a field of the reference that begins here has %d signs, more than the %d a record may hold"
                        .formatted(length, LONGEST),
                what,
                "look at it in the file, and shorten it");
    }

    void issued(PartialDate date) {
        issued = Optional.of(date);
    }

    Optional<PartialDate> issued() {
        return issued;
    }

    void notice(Notice notice) {
        notices.add(notice);
    }

    boolean has(Field field) {
        return fields.containsKey(field);
    }

    Optional<String> get(Field field) {
        return Optional.ofNullable(fields.get(field));
    }

    void keep(String tag, String text) {
        var plain = fitting(text);
        // a damaged file may have anything for the name of a field
        var name = Plain.text(tag);
        if (!plain.isEmpty() && !name.isEmpty()) {
            kept.computeIfAbsent(name, t -> new ArrayList<>()).add(plain);
        }
    }

    /** The field, if it says something. */
    void set(Field field, String text) {
        var plain = fitting(text);
        if (!plain.isEmpty()) {
            fields.put(field, plain);
        }
    }

    /** A DOI, if the text has the form of one; else it is kept as it stands, with a finding. */
    void doi(String tag, String text, Span span) {
        Doi.read(Plain.text(text)).ifPresentOrElse(name -> set(Field.DOI, name), () -> {
            keep(tag, text);
            note(
                    "doi-form",
                    span,
                    "`%s` has not the form of a DOI".formatted(Plain.text(text)),
                    "a DOI is 10., a registrant, a slash and a name; it was left out (its form alone is looked at, nothing is looked up)",
                    "write it as 10.5555/..., or take it out");
        });
    }

    /** A PubMed identifier, if the text is a number; else it is kept as it stands, with a finding. */
    void pmid(String tag, String text, Span span) {
        var number = Plain.text(text).replaceFirst("(?i)^PMID:?\\s*", "");
        if (number.matches("\\d{1,9}")) {
            set(Field.PMID, number);
        } else {
            keep(tag, text);
            note(
                    "pmid-form",
                    span,
                    "`%s` is not a PubMed identifier".formatted(Plain.text(text)),
                    "one is a number of up to nine digits; it was left out",
                    "write the number, or take it out");
        }
    }

    void note(String code, Span span, String message, String why, String fix) {
        findings.add(Diagnostic.note(code, span, message, why, fix));
    }

    /** The finding for a date that is kept as it stands because it is none. */
    void dateUnreadable(Span span, String text) {
        note(
                "date-unreadable",
                span,
                "`%s` does not say a year".formatted(Plain.text(text)),
                "the year is part of the citation and of the name that the source is given",
                "write the year in four digits");
    }

    /** The reference, unless it has no title; then a finding says that it was left out. */
    Optional<Found> found() {
        var withdrawn = TitleNotice.of(title);
        withdrawn.notice().ifPresent(n -> {
            if (notices.stream().noneMatch(m -> m.state() == n.state())) {
                notices.add(n);
            }
        });
        if (withdrawn.title().isBlank()) {
            findings.add(Diagnostic.hold(
                    "title-missing",
                    at,
                    "the reference that begins here has no title",
                    "a work without a title can be neither cited nor recognised; it was left out",
                    "add its title to the file"));
            return Optional.empty();
        }
        var reference = new Reference(
                type,
                withdrawn.title(),
                authors,
                editors,
                issued,
                fields,
                notices.stream().min(Notice.GRAVEST),
                kept.entrySet().stream()
                        .map(e -> new Kept(format.word(), e.getKey(), e.getValue()))
                        .toList());
        return Optional.of(new Found(reference, at));
    }
}
