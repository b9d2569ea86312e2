package comparand.reference.format;

import static java.util.Objects.requireNonNull;

import comparand.model.library.PartialDate;
import comparand.model.library.SourceState;
import comparand.reference.Field;
import comparand.reference.Kept;
import comparand.reference.Name;
import comparand.reference.Notice;
import comparand.reference.Reference;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/**
 * Any reference that a format can carry whole: its types, its fields, and whatever signs a person may have typed. What a format
 * cannot carry is left out here and nowhere else.
 */
final class AnyReference {

    /** Signs that mean something to one of the formats, and letters of several scripts. */
    private static final String SIGNS = "abcXYZ0123 -%\\{}$&#_~^`'\"@,;.:?!()[]/+=*|–—éüßøłçñÅØ“”‘’µ²αβ体Ж\u0301";

    private static final Map<ReferenceFormat, Set<String>> TYPES = Map.of(
            ReferenceFormat.RIS,
                    Set.of(
                            "article-journal",
                            "article",
                            "book",
                            "chapter",
                            "paper-conference",
                            "report",
                            "standard",
                            "thesis",
                            "pamphlet",
                            "patent",
                            "webpage",
                            "dataset",
                            "document",
                            "manuscript"),
            ReferenceFormat.NBIB, Set.of("article-journal", "article", "book", "chapter", "paper-conference"),
            ReferenceFormat.BIBTEX,
                    Set.of(
                            "article-journal",
                            "article",
                            "book",
                            "chapter",
                            "paper-conference",
                            "report",
                            "standard",
                            "thesis",
                            "pamphlet",
                            "patent",
                            "webpage",
                            "dataset",
                            "document"),
            ReferenceFormat.CSL_JSON,
                    Set.of(
                            "article-journal",
                            "article",
                            "book",
                            "report",
                            "pamphlet",
                            "legal_case",
                            "document",
                            "software"));

    private static final Map<ReferenceFormat, List<String>> KEPT = Map.of(
            ReferenceFormat.RIS, List.of("KW", "C1", "M3", "AD", "N1"),
            ReferenceFormat.NBIB, List.of("MH", "OT", "PT", "CIN", "GN"),
            ReferenceFormat.BIBTEX, List.of("keywords", "annote", "eprint"),
            ReferenceFormat.CSL_JSON, List.of("keyword", "annote", "event", "medium"));

    private static final Set<Field> NOT_PROSE =
            Set.of(Field.DOI, Field.PMID, Field.PMCID, Field.URL, Field.ISSN, Field.ISBN, Field.LANGUAGE, Field.PAGE);

    private final ReferenceFormat format;

    AnyReference(ReferenceFormat format) {
        this.format = format;
    }

    Arbitrary<Reference> references() {
        var rest = Combinators.combine(dates().optional(), notices().optional(), kept())
                .as(Rest::new);
        return Arbitraries.of(
                        requireNonNull(TYPES.get(format)).stream().sorted().toList())
                .flatMap(type -> Combinators.combine(
                                text(),
                                names(true),
                                names(false).map(l -> hasEditors() ? l : List.<Name>of()),
                                fields(type),
                                rest)
                        .as((title, authors, editors, fields, r) ->
                                new Reference(type, title, authors, editors, r.issued, fields, r.notice, r.kept)));
    }

    private record Rest(Optional<PartialDate> issued, Optional<Notice> notice, List<Kept> kept) {}

    private boolean hasEditors() {
        return true;
    }

    /** A line of prose: single blanks, none at its ends, and not the note by which a status travels. */
    static Arbitrary<String> text() {
        return Arbitraries.strings()
                .withChars(SIGNS.toCharArray())
                .ofMinLength(1)
                .ofMaxLength(160)
                .map(Plain::text)
                .filter(t -> !t.isBlank() && t.codePoints().anyMatch(Character::isLetterOrDigit));
    }

    private Arbitrary<List<Name>> names(boolean bodies) {
        var family = Arbitraries.of(
                "Müller",
                "O'Brien",
                "Łukasiewicz",
                "García Márquez",
                "Ng",
                "Sørensen-Dahl",
                "Àlvarez",
                "李",
                "Weiß",
                "Ortega y Gasset");
        var given = Arbitraries.of("Jan-Peter A.", "É.", "M", "Anna Lena", "J. R. R.", "Ümit", "And");
        var particle = Arbitraries.of("", "", "van der", "de la", "von");
        var suffix = Arbitraries.of("", "", "", "Jr", "Sr");
        var person = Combinators.combine(family, given, particle, suffix)
                .as((f, g, p, s) -> new Name(f, g, p, "", s, ""))
                .filter(n -> format != ReferenceFormat.NBIB || !n.given().equals("M"));
        var body = Arbitraries.of(
                        "Invented Group for Pumps and Lines",
                        "Panel {50%}, Section_1",
                        "Verein Ü & Co.",
                        "others of us")
                .map(Name::body);
        var whoever = bodies || format != ReferenceFormat.NBIB
                ? Arbitraries.frequencyOf(net.jqwik.api.Tuple.of(4, person), net.jqwik.api.Tuple.of(1, body))
                : person;
        return whoever.list().ofMaxSize(5);
    }

    private static Arbitrary<PartialDate> dates() {
        return Combinators.combine(
                        Arbitraries.integers().between(1900, 2030),
                        Arbitraries.integers().between(0, 12),
                        Arbitraries.integers().between(0, 28))
                .as((y, m, d) -> PartialDate.read(y
                                + (m == 0 ? "" : "-%02d".formatted(m))
                                + (m == 0 || d == 0 ? "" : "-%02d".formatted(d)))
                        .orElseThrow());
    }

    private static Arbitrary<Notice> notices() {
        return Combinators.combine(
                        Arbitraries.of(SourceState.RETRACTED, SourceState.CORRECTED, SourceState.CONCERN),
                        text().optional(0.8),
                        dates().optional())
                .as((s, t, d) -> new Notice(s, t.orElse(""), d));
    }

    private Arbitrary<List<Kept>> kept() {
        boolean once = format == ReferenceFormat.BIBTEX || format == ReferenceFormat.CSL_JSON;
        return Arbitraries.subsetOf(Set.copyOf(requireNonNull(KEPT.get(format))))
                .flatMap(tags -> {
                    Arbitrary<List<Kept>> all = Arbitraries.just(List.of());
                    for (var tag : tags.stream().sorted().toList()) {
                        var texts = text().list().ofMinSize(1).ofMaxSize(once ? 1 : 3);
                        all = Combinators.combine(all, texts).as((before, t) -> {
                            var next = new ArrayList<>(before);
                            next.add(new Kept(format.word(), tag, t));
                            return next;
                        });
                    }
                    return all;
                });
    }

    private Arbitrary<Map<Field, String>> fields(String type) {
        Arbitrary<Map<Field, String>> all = Arbitraries.just(Map.of());
        for (var field : Field.values()) {
            if (carries(type, field)) {
                all = Combinators.combine(all, value(field).optional(0.5)).as((before, value) -> {
                    if (value.isEmpty()) {
                        return before;
                    }
                    var next = new EnumMap<Field, String>(Field.class);
                    next.putAll(before);
                    next.put(field, value.get());
                    return next;
                });
            }
        }
        // a short name stands beside the whole one
        return all.map(f -> {
            var fields = new EnumMap<Field, String>(Field.class);
            fields.putAll(f);
            if (!f.containsKey(Field.CONTAINER_TITLE)
                    || f.get(Field.CONTAINER_TITLE).equals(f.get(Field.CONTAINER_TITLE_SHORT))) {
                fields.remove(Field.CONTAINER_TITLE_SHORT);
            }
            return fields;
        });
    }

    private boolean carries(String type, Field field) {
        boolean isWhole = RisTypes.isWhole(type);
        boolean isNumbered = RisTypes.isNumbered(type);
        return switch (format) {
            case CSL_JSON -> true;
            case RIS ->
                switch (field) {
                    case CONTAINER_TITLE, CONTAINER_TITLE_SHORT -> !isWhole;
                    case ISSUE -> !isNumbered;
                    case NUMBER -> isNumbered;
                    default -> true;
                };
            case BIBTEX ->
                switch (field) {
                    case ISSUE -> !isNumbered;
                    case NUMBER -> isNumbered;
                    default -> true;
                };
            case NBIB ->
                switch (field) {
                    case NUMBER, URL -> false;
                    case CONTAINER_TITLE -> !type.equals("book");
                    case CONTAINER_TITLE_SHORT -> type.startsWith("article");
                    case PMID -> true;
                    default -> true;
                };
        };
    }

    private static Arbitrary<String> value(Field field) {
        if (!NOT_PROSE.contains(field)) {
            return text();
        }
        return switch (field) {
            case DOI ->
                Arbitraries.of(
                        "10.5555/abc.2023.0041",
                        "10.5555/(SICI)1097<1661::AID-X968>3.0.CO;2-2",
                        "10.5555/a_b-c(1)d",
                        "10.55555/Ü.1");
            case PMID -> Arbitraries.integers().between(1, 99_999_999).map(i -> Integer.toString(i));
            case PMCID -> Arbitraries.integers().between(1, 9_999_999).map(i -> "PMC" + i);
            case URL -> Arbitraries.of("https://example.org/a?b=%20c&d=~e_f#g", "http://example.com/ü/x$y");
            case ISSN -> Arbitraries.of("1234-5678", "0000-000X");
            case ISBN -> Arbitraries.of("978-3-16-148410-0", "0306406152");
            case LANGUAGE -> Arbitraries.of("de", "en", "fr", "el", "cs", "ja");
            default -> Arbitraries.of("41-50", "e1005", "S3-S9", "112", "1-4, 8-9", "xii-xx");
        };
    }
}
