package comparand.intake;

import comparand.diag.Diagnostic;
import comparand.document.form.FormList.Word;
import comparand.document.record.Entry;
import comparand.document.record.Field;
import comparand.unit.DecimalSign;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The questions for one value, one at a time: who reads, which source, what the source is if the library does not know it, and
 * then the value. It knows nothing of a terminal, and can be kept and taken up again after any answer.
 */
public final class Interview {

    /** Where a finding stands that concerns no single answer. */
    static final String RECORD = "the record";

    private static final int MOST_WORDS = 12;

    private static final Slot BY = Slot.text("", IntakeForm.READER, "Your initials?", "Two or three letters.");

    private final Scope scope;
    private final Map<String, Entry.Fields> existing;
    private final String today;
    private final ValuePieces outline;
    private final SourcePieces sourcePieces;
    private final Asking opening;
    private Optional<Asking> source = Optional.empty();
    private Optional<Asking> value = Optional.empty();

    /**
     * An interview.
     *
     * @param existing the records of the library's sources, by name
     * @param today the day of reading, as year-month-day
     */
    public Interview(Scope scope, Map<String, Entry.Fields> existing, String today) {
        this.scope = scope;
        this.existing = existing;
        this.today = today;
        this.outline = pieces("");
        this.sourcePieces = new SourcePieces(scope);
        this.opening =
                new Asking(List.of(TextPiece.needed("by", BY), TextPiece.needed("source", outline.source())), Map.of());
    }

    private ValuePieces pieces(String by) {
        return new ValuePieces(scope, new Reader(by, today), new Known());
    }

    /** The source as recorded, or as just answered. */
    private final class Known implements ValuePieces.KnownSource {
        @Override
        public boolean states(String id, String condition) {
            return text(id, "conditions/" + condition).isPresent();
        }

        @Override
        public boolean isCorrected(String id) {
            return text(id, "status/state").filter("corrected"::equals).isPresent();
        }

        private Optional<String> text(String id, String path) {
            var recorded = Optional.ofNullable(existing.get(id));
            return recorded.or(() -> source.map(this::drafted)).flatMap(s -> Paths.text(s, path));
        }

        private Entry.Fields drafted(Asking asking) {
            var draft = new Draft(asking.answers(), DecimalSign.POINT);
            sourcePieces.all().forEach(p -> p.write(draft));
            return draft.record();
        }
    }

    /** A question as it is put. */
    public record Question(String heading, String text, String help, boolean needed) {}

    /** What is asked next; empty when the value can be taken. */
    public Optional<Question> next() {
        return asking().flatMap(a -> a.next().map(s -> question(a, s)));
    }

    private Optional<Asking> asking() {
        if (opening.next().isPresent()) {
            return Optional.of(opening);
        }
        var id = opening.answers().text(outline.source()).orElseThrow();
        if (!existing.containsKey(id)) {
            if (source.isEmpty()) {
                source = Optional.of(new Asking(sourcePieces.all(), Map.of(SourcePieces.ID, id)));
            }
            if (source.get().next().isPresent()) {
                return source;
            }
        }
        if (value.isEmpty()) {
            value = Optional.of(new Asking(valuePieces().all(), Map.of(outline.source(), id)));
        }
        return value.filter(v -> v.next().isPresent());
    }

    private ValuePieces valuePieces() {
        return pieces(opening.answers().text(BY).orElseThrow());
    }

    private static Question question(Asking asking, Slot slot) {
        var words = Asking.words(slot);
        var shown = words.isEmpty() || words.size() > MOST_WORDS ? "" : " [" + String.join(" | ", words) + "]";
        var meanings = slot.words().stream().map(Interview::meaning).collect(Collectors.joining("\n"));
        return new Question(
                slot.heading(),
                slot.question() + shown,
                slot.help() + (meanings.isEmpty() ? "" : "\n" + meanings),
                asking.needs(slot));
    }

    private static String meaning(Word word) {
        return "  " + word.word() + (word.meaning().isEmpty() ? "" : ": " + word.meaning());
    }

    /** Takes the answer to the question asked, or says why it cannot be one. */
    public Optional<String> answer(String typed) {
        var asking = asking().orElseThrow();
        var slot = asking.next().orElseThrow();
        var text = typed.strip();
        if (slot.equals(outline.source()) && !text.isEmpty() && !SourcePieces.isName(text)) {
            return Optional.of("`%s` cannot name a source; %s.".formatted(text, SourcePieces.NAME_RULE));
        }
        return asking.answer(slot, typed);
    }

    /** Takes the last answer back, so that it is asked for again; false where there is none. */
    public boolean back() {
        for (var asking : List.of(value, source, Optional.of(opening))) {
            if (asking.isPresent()) {
                var last = asking.get().back();
                if (last.isPresent() && !isFixed(asking.get(), last.get())) {
                    return true;
                }
                // the first answer of a part is the name of the source, which the part before asked for
                if (asking.equals(value)) {
                    value = Optional.empty();
                } else if (asking.equals(source)) {
                    source = Optional.empty();
                }
            }
        }
        return false;
    }

    private boolean isFixed(Asking asking, Slot slot) {
        return asking != opening && (slot.equals(outline.source()) || slot.equals(SourcePieces.ID));
    }

    /** Asks again for what findings are about; false where none of them is about an answer. */
    public boolean askAgain(List<Diagnostic> findings) {
        // all of them: any match alone would leave the others as they were answered
        return findings.stream().map(f -> askAgain(f.span().file())).toList().contains(true);
    }

    /** Asks again for one answer, named by its heading; false where there is none of the name. */
    public boolean askAgain(String heading) {
        boolean any = false;
        for (var asking : parts()) {
            if (asking.given().containsKey(heading)) {
                asking.forget(heading);
                any = true;
            }
        }
        return any;
    }

    /** The names of all answers that can be given anew. */
    public List<String> headings() {
        return parts().stream().flatMap(a -> a.given().keySet().stream()).toList();
    }

    private List<Asking> parts() {
        return Stream.concat(source.stream(), value.stream()).toList();
    }

    /** What was answered, as it may be kept in a file. */
    public Entry.Fields kept() {
        var parts = new ArrayList<Field>();
        parts.add(new Field("opening", entry(opening)));
        source.ifPresent(s -> parts.add(new Field("source", entry(s))));
        value.ifPresent(v -> parts.add(new Field("value", entry(v))));
        return new Entry.Fields(parts);
    }

    private static Entry entry(Asking asking) {
        return new Entry.Fields(asking.given().entrySet().stream()
                .map(e -> Field.of(e.getKey(), e.getValue()))
                .toList());
    }

    /** Takes up what was kept. */
    public void resume(Entry.Fields kept) {
        opening.resume(answers(kept, "opening"));
        for (var part : List.of("source", "value")) {
            asking().ifPresent(a -> a.resume(answers(kept, part)));
        }
    }

    private static Map<String, String> answers(Entry.Fields kept, String part) {
        var answers = new LinkedHashMap<String, String>();
        kept.get(part).ifPresent(e -> {
            if (e instanceof Entry.Fields fields) {
                fields.list().forEach(f -> fields.text(f.key()).ifPresent(t -> answers.put(f.key(), t)));
            }
        });
        return answers;
    }

    /** The records that follow from the answers. */
    public Taken taken() {
        var taking = new Taking(existing);
        source.ifPresent(s -> taking.source(sourcePieces, s.answers()));
        value.ifPresent(v -> taking.value(valuePieces(), v.answers()));
        return taking.taken();
    }

    /** An interview for a further value by the same reader from the same source, over what the library says now. */
    public Interview another(Map<String, Entry.Fields> now) {
        var next = new Interview(scope, now, today);
        next.opening.resume(opening.given());
        return next;
    }
}
