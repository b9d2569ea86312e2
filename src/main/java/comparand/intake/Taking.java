package comparand.intake;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.document.record.Entry;
import comparand.document.record.Field;
import comparand.unit.DecimalSign;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Makes records from answers, over those that are there already. A source or value that is known is changed; of a known record
 * only what the form asks for can change, so that keys the form does not know stay.
 */
final class Taking {

    private static final String OWN = "";

    private final Map<String, Entry.Fields> existing;
    private final SortedMap<String, Entry.Fields> wanted = new TreeMap<>();
    private final Map<String, SortedMap<String, Span>> places = new HashMap<>();
    private final List<Echo> echoes = new ArrayList<>();
    private final List<String> sentences = new ArrayList<>();
    private final List<Diagnostic> findings = new ArrayList<>();
    private final Set<String> sourcesSeen = new HashSet<>();
    private final Set<String> valuesSeen = new HashSet<>();

    /**
     * Taking over a library.
     *
     * @param existing the records of its sources, by name
     */
    Taking(Map<String, Entry.Fields> existing) {
        this.existing = Map.copyOf(existing);
    }

    void refuse(Diagnostic finding) {
        findings.add(finding);
    }

    /** Takes a source; its values stay as they are. */
    void source(SourcePieces pieces, Answers answers) {
        var id = answers.get(SourcePieces.ID);
        if (id.isEmpty()) {
            findings.add(Diagnostic.stop(
                    "form-source-unnamed",
                    answers.start(),
                    "this source has no name",
                    "values say by its name which source they stand in",
                    "write a name such as ardley-2023 into the column `%s`".formatted(SourcePieces.ID.heading())));
            return;
        }
        if (!SourcePieces.isName(id.get().text())) {
            findings.add(Diagnostic.stop(
                    "form-source-name",
                    id.get().at(),
                    "`%s` is not a plain name".formatted(id.get().text()),
                    "it becomes the name of a file, and travels through tables and addresses",
                    SourcePieces.NAME_RULE));
            return;
        }
        if (!sourcesSeen.add(id.get().text())) {
            findings.add(twice(id.get(), "source"));
            return;
        }
        var sign = answers.text(SourcePieces.DECIMAL).flatMap(Taking::sign).orElse(DecimalSign.POINT);
        var draft = new Draft(answers, sign);
        pieces.all().forEach(p -> p.write(draft));
        keep(draft);
        var before = record(id.get().text());
        var merged = merged(before.orElse(Entry.Fields.NONE), draft.record(), pieces.all(), OWN);
        wanted.put(id.get().text(), withValues(merged, values(before)));
        draft.places().forEach((path, at) -> places(id.get().text()).put(path, at));
    }

    /** Takes a value into its source. */
    void value(ValuePieces pieces, Answers answers) {
        var source = answers.get(pieces.source());
        if (source.isEmpty()) {
            findings.add(Diagnostic.stop(
                    "form-value-without-source",
                    answers.start(),
                    "this value has no source",
                    "a number without its source cannot be traced",
                    "choose the source it stands in"));
            return;
        }
        var name = source.get().text();
        var before = record(name);
        if (before.isEmpty()) {
            findings.add(Diagnostic.stop(
                    "form-source-unknown",
                    source.get().at(),
                    "there is no source `%s`".formatted(name),
                    "a value stands in the file of its source",
                    "add a row for it to the sheet Sources, or choose one of: "
                            + String.join(", ", new TreeMap<>(existing).keySet())));
            return;
        }
        var draft = new Draft(
                answers, before.get().text("decimal").flatMap(Taking::sign).orElse(DecimalSign.POINT));
        pieces.all().forEach(p -> p.write(draft));
        keep(draft);
        var values = values(before);
        var id = answers.text(ValuePieces.ID).orElseGet(() -> nameOf(name, draft.record(), values));
        if (!valuesSeen.add(id)) {
            findings.add(twice(new Answers.Answer(id, answers.at(ValuePieces.ID)), "value"));
            return;
        }
        var known = values.stream()
                .filter(v -> v.text(Entry.Fields.ID).filter(id::equals).isPresent())
                .findFirst();
        var named = new ArrayList<>(List.of(Field.of(Entry.Fields.ID, id)));
        draft.record().list().stream()
                .filter(f -> !f.key().equals(Entry.Fields.ID))
                .forEach(named::add);
        var next = ReadersPiece.joined(
                known, merged(known.orElse(Entry.Fields.NONE), new Entry.Fields(named), pieces.all(), OWN), answers);
        var all = known.isPresent()
                ? values.stream()
                        .map(v -> v.text(Entry.Fields.ID).filter(id::equals).isPresent() ? next : v)
                        .toList()
                : Stream.concat(values.stream(), Stream.of(next)).toList();
        wanted.put(name, withValues(before.get(), all));
        var at = places(name);
        var path = SourcePieces.VALUES + Draft.STEP + id;
        at.put(path + Draft.STEP + Entry.Fields.ID, answers.at(ValuePieces.ID));
        draft.places().forEach((p, span) -> at.put(path + Draft.STEP + p, span));
        sentences.add(ValueSentence.of(name, pieces.metric(answers), next));
    }

    private static Diagnostic twice(Answers.Answer name, String what) {
        return Diagnostic.stop(
                "form-named-twice",
                name.at(),
                "the %s `%s` has a second row".formatted(what, name.text()),
                "one of the two would be lost",
                "give each its own name, or keep one of the rows");
    }

    /** The value that says the same of the same place, or the next free name. */
    private static String nameOf(String source, Entry.Fields value, List<Entry.Fields> values) {
        return values.stream()
                .filter(v -> Stream.of("device", "metric", "printed", "place")
                        .allMatch(k -> v.get(k).equals(value.get(k))))
                .findFirst()
                .flatMap(v -> v.text(Entry.Fields.ID))
                .orElseGet(() -> {
                    var taken = values.stream()
                            .flatMap(v -> v.text(Entry.Fields.ID).stream())
                            .toList();
                    int next = 1;
                    while (taken.contains(source + "-" + next)) {
                        next++;
                    }
                    return source + "-" + next;
                });
    }

    private void keep(Draft draft) {
        findings.addAll(draft.findings());
        echoes.addAll(draft.echoes());
    }

    private Optional<Entry.Fields> record(String source) {
        return Optional.ofNullable(wanted.get(source)).or(() -> Optional.ofNullable(existing.get(source)));
    }

    private static List<Entry.Fields> values(Optional<Entry.Fields> source) {
        return source.map(Records::values).orElse(List.of());
    }

    /** The values stand before the remark. */
    private static Entry.Fields withValues(Entry.Fields source, List<Entry.Fields> values) {
        var items = new Entry.Items(List.copyOf(values));
        if (source.get(SourcePieces.VALUES).isPresent()) {
            return source.with(SourcePieces.VALUES, items);
        }
        var fields = new ArrayList<>(source.list());
        int remark = fields.size();
        for (int i = 0; i < fields.size(); i++) {
            if (fields.get(i).key().equals("remark")) {
                remark = i;
            }
        }
        fields.add(remark, new Field(SourcePieces.VALUES, items));
        return new Entry.Fields(fields);
    }

    /** The new record, with those keys of the old one that no piece knows; they stand behind the others. */
    private static Entry.Fields merged(Entry.Fields old, Entry.Fields next, List<Piece> pieces, String path) {
        var fields = new ArrayList<Field>();
        for (var field : next.list()) {
            var was = old.get(field.key());
            boolean inner = field.value() instanceof Entry.Fields
                    && was.filter(Entry.Fields.class::isInstance).isPresent();
            fields.add(
                    inner
                            ? new Field(
                                    field.key(),
                                    merged(
                                            (Entry.Fields) was.get(),
                                            (Entry.Fields) field.value(),
                                            pieces,
                                            path + field.key() + Draft.STEP))
                            : field);
        }
        for (var field : old.list()) {
            if (next.get(field.key()).isPresent()) {
                continue;
            }
            var here = path + field.key();
            boolean known = pieces.stream().flatMap(p -> p.paths().stream()).anyMatch(here::equals);
            boolean above =
                    pieces.stream().flatMap(p -> p.paths().stream()).anyMatch(p -> p.startsWith(here + Draft.STEP));
            if (!known && !above) {
                fields.add(field);
            } else if (above && field.value() instanceof Entry.Fields inner) {
                var rest = merged(inner, Entry.Fields.NONE, pieces, here + Draft.STEP);
                if (!rest.isEmpty()) {
                    fields.add(new Field(field.key(), rest));
                }
            }
        }
        return new Entry.Fields(fields);
    }

    private SortedMap<String, Span> places(String source) {
        return places.computeIfAbsent(source, s -> new TreeMap<>());
    }

    private static Optional<DecimalSign> sign(String word) {
        return switch (word) {
            case "comma" -> Optional.of(DecimalSign.COMMA);
            case "point" -> Optional.of(DecimalSign.POINT);
            default -> Optional.empty();
        };
    }

    Taken taken() {
        return new Taken(wanted, places, echoes, sentences, findings);
    }
}
