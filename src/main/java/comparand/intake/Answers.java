package comparand.intake;

import comparand.diag.Span;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What was answered, slot by slot, each answer with its place; a slot that is left empty has none. */
final class Answers {

    /** One answer: its text, stripped and not empty, and where it was written. */
    record Answer(String text, Span at) {
        Answer {
            if (text.isEmpty() || !text.equals(text.strip())) {
                throw new IllegalArgumentException("an answer is stripped and says something, got `" + text + "`");
            }
        }
    }

    private final Map<Slot, Answer> given;
    private final Span start;

    /**
     * Answers.
     *
     * @param start where the answers as a whole stand: the first cell of their row
     */
    Answers(Map<Slot, Answer> given, Span start) {
        this.given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
        this.start = start;
    }

    Optional<Answer> get(Slot slot) {
        return Optional.ofNullable(given.get(slot));
    }

    Optional<String> text(Slot slot) {
        return get(slot).map(Answer::text);
    }

    boolean is(Slot slot, String word) {
        return text(slot).filter(word::equals).isPresent();
    }

    /** Where an answer stands, or where it would. */
    Span at(Slot slot) {
        return get(slot).map(Answer::at).orElse(start);
    }

    Span start() {
        return start;
    }

    boolean isEmpty() {
        return given.isEmpty();
    }

    Map<Slot, Answer> all() {
        return given;
    }

    Answers with(Slot slot, Optional<Answer> answer) {
        var next = new LinkedHashMap<>(given);
        answer.ifPresentOrElse(a -> next.put(slot, a), () -> next.remove(slot));
        return new Answers(next, start);
    }
}
