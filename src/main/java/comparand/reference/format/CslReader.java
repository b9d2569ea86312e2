package comparand.reference.format;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.reference.Field;
import comparand.reference.Found;
import comparand.reference.Languages;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * CSL-JSON after the schema of the Citation Style Language (csl-data.json, 1.0.2), as programs write it and as DOI services
 * return it. Fields that have no place in a citation are kept; one that is no text is kept as JSON under its name and
 * {@link #AS_JSON}.
 */
final class CslReader {

    static final String AS_JSON = ":json";
    static final JsonMapper JSON = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxStringLength(ReferenceFile.LONGEST_LINE)
                            .build())
                    .build())
            .build();

    /** Abstracts belong to their publishers; the others are the bookkeeping of registration agencies (from memory). */
    private static final Set<String> NOT_KEPT = Set.of(
            "id",
            "abstract",
            "indexed",
            "reference",
            "reference-count",
            "references-count",
            "is-referenced-by-count",
            "deposited",
            "score",
            "content-domain",
            "created",
            "license",
            "link",
            "resource",
            "prefix",
            "member",
            "title",
            "author",
            "editor",
            "type",
            "issued");

    private final Lines lines;
    private final String text;
    private final List<Diagnostic> findings;

    CslReader(String file, String text, List<Diagnostic> findings) {
        this.text = text;
        this.lines = Lines.at(file, text);
        this.findings = findings;
    }

    List<Found> read() {
        var found = new ArrayList<Found>();
        for (var chunk : JsonChunks.of(text)) {
            fields(chunk).flatMap(f -> reference(chunk, f).found()).ifPresent(found::add);
        }
        return found;
    }

    /** A field with the place of its name. */
    private record Member(JsonNode value, Span span) {}

    private Optional<Map<String, Member>> fields(JsonChunks.Chunk chunk) {
        var fields = new LinkedHashMap<String, Member>();
        try (var parser = JSON.createParser(chunk.text())) {
            parser.nextToken();
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                var name = parser.currentName();
                var span = span(chunk, parser.currentTokenLocation(), name.length() + 2);
                parser.nextToken();
                JsonNode value = parser.readValueAsTree();
                if (value == null || fields.containsKey(name)) {
                    note(
                            "field-twice",
                            span,
                            "`%s` stands twice in this reference".formatted(Plain.text(name)),
                            "only one of them can be meant; the first was taken",
                            "keep the one that is right");
                } else {
                    fields.put(name, new Member(value, span));
                }
            }
            if (parser.currentToken() != JsonToken.END_OBJECT) {
                throw new com.fasterxml.jackson.core.JsonParseException(parser, "`}` is missing");
            }
            return Optional.of(fields);
        } catch (JsonProcessingException e) {
            findings.add(Diagnostic.hold(
                    "entry-unreadable",
                    span(chunk, e.getLocation(), 1),
                    "this is not JSON: " + Plain.text(e.getOriginalMessage()).replaceAll("\\.$", ""),
                    "the reference that holds it was left out; reading went on with the next",
                    "export the references again, or mend the text at this place"));
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Span span(JsonChunks.Chunk chunk, JsonLocation at, int length) {
        long within = at == null ? 0 : Math.max(0, at.getCharOffset());
        return lines.span(chunk.offset() + (int) Math.min(within, chunk.text().length()), length);
    }

    private Draft reference(JsonChunks.Chunk chunk, Map<String, Member> fields) {
        var draft = new Draft(ReferenceFormat.CSL_JSON, lines.span(chunk.offset(), 1), findings);
        type(draft, fields);
        member(fields, "title").flatMap(m -> first(m.value())).ifPresent(t -> draft.title(CslMarkup.plain(t)));
        member(fields, "author").ifPresent(m -> CslNames.read(m.value()).forEach(draft::author));
        member(fields, "editor").ifPresent(m -> CslNames.read(m.value()).forEach(draft::editor));
        member(fields, "issued").ifPresent(m -> issued(draft, m));
        for (var field : Field.values()) {
            member(fields, field.key()).ifPresent(m -> field(draft, field, m));
        }
        member(fields, "updated-by").ifPresent(m -> CslStanding.read(draft, m.value()));
        fields.forEach((name, member) -> rest(draft, name, member));
        return draft;
    }

    private static Optional<Member> member(Map<String, Member> fields, String name) {
        return Optional.ofNullable(fields.get(name)).filter(m -> !m.value().isNull());
    }

    private void type(Draft draft, Map<String, Member> fields) {
        var member = member(fields, "type");
        var word = member.map(m -> m.value().asText());
        word.flatMap(CslTypes::type).ifPresentOrElse(draft::type, () -> {
            word.filter(w -> !w.isBlank()).ifPresent(w -> draft.keep("type", w));
            note(
                    "type-unknown",
                    member.map(Member::span).orElse(lines.span(0, 1)),
                    word.map(w -> "`%s` is not a type of CSL".formatted(Plain.text(w)))
                            .orElse("a reference has no `type`"),
                    "the type decides how a work is cited; it is read as a document",
                    "write one that is, such as `article-journal`");
        });
    }

    private void issued(Draft draft, Member member) {
        var date = CslDates.read(member.value());
        date.ifPresentOrElse(
                draft::issued,
                () -> draft.dateUnreadable(member.span(), member.value().toString()));
        if (!CslDates.isSame(member.value(), date)) {
            draft.keep("issued" + AS_JSON, member.value().toString());
        }
    }

    private static void field(Draft draft, Field field, Member member) {
        texts(member.value())
                .ifPresentOrElse(
                        t -> {
                            switch (field) {
                                case DOI -> draft.doi("DOI", t, member.span());
                                case PMID -> draft.pmid("PMID", t, member.span());
                                case PAGE -> draft.set(field, Pages.read(t));
                                case LANGUAGE -> draft.set(field, Languages.two(t));
                                default -> draft.set(field, CslMarkup.plain(t));
                            }
                        },
                        () -> keep(draft, field.key(), member.value()));
    }

    /** The text of a value; of a list of texts, all of the short ones and the first of titles. */
    private static Optional<String> texts(JsonNode value) {
        if (value.isArray() && !value.isEmpty()) {
            var texts = new ArrayList<String>();
            value.forEach(v -> first(v).ifPresent(texts::add));
            boolean isNumbers = texts.stream().allMatch(t -> t.matches("[\\d -]+[\\dXx]"));
            return texts.isEmpty()
                    ? Optional.empty()
                    : Optional.of(isNumbers ? String.join(", ", texts) : texts.get(0));
        }
        return first(value);
    }

    private static Optional<String> first(JsonNode value) {
        var node = value.isArray() && !value.isEmpty() ? value.get(0) : value;
        return node.isTextual() || node.isNumber() ? Optional.of(node.asText()) : Optional.empty();
    }

    private static void rest(Draft draft, String name, Member member) {
        boolean isRead =
                java.util.Arrays.stream(Field.values()).anyMatch(f -> f.key().equals(name));
        if (isRead
                || NOT_KEPT.contains(name)
                || name.isBlank()
                || member.value().isNull()) {
            return;
        }
        if (name.equals("note") && member.value().isTextual()) {
            var status = StatusNote.read(member.value().asText());
            if (status.isPresent()) {
                draft.notice(status.get());
                return;
            }
        }
        keep(draft, Plain.text(name), member.value());
    }

    private static void keep(Draft draft, String name, JsonNode value) {
        if (value.isTextual() && !name.endsWith(AS_JSON)) {
            draft.keep(name, value.asText());
        } else {
            draft.keep(name + AS_JSON, value.toString());
        }
    }

    private void note(String code, Span span, String message, String why, String fix) {
        findings.add(Diagnostic.note(code, span, message, why, fix));
    }
}
