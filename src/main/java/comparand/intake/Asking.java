package comparand.intake;

import comparand.diag.Span;
import comparand.diag.Suggest;
import comparand.document.form.FormList.Word;
import comparand.model.library.ConditionText;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Asks for the slots of some pieces, one after the other; what is asked next follows from what was answered. An answer that
 * cannot be right is refused at once, with what to type instead.
 */
final class Asking {

    /** What is typed for a condition, a number or a spread that the source does not report. */
    static final String NOT_REPORTED = "nr";

    private final List<Piece> pieces;
    private final LinkedHashMap<Slot, String> given = new LinkedHashMap<>();

    /**
     * Asking for pieces.
     *
     * @param known what need not be asked for
     */
    Asking(List<Piece> pieces, Map<Slot, String> known) {
        this.pieces = List.copyOf(pieces);
        given.putAll(known);
    }

    /** What is asked next; empty when all is answered. */
    Optional<Slot> next() {
        var soFar = answers();
        return pieces.stream()
                .flatMap(p -> p.asked(soFar).stream())
                .filter(s -> !given.containsKey(s))
                .findFirst();
    }

    /** Whether a slot has to be answered. */
    boolean needs(Slot slot) {
        var soFar = answers();
        return pieces.stream().filter(p -> p.asked(soFar).contains(slot)).anyMatch(p -> p.needs(slot, soFar));
    }

    /** Takes an answer to a slot, or says why it cannot be one. */
    Optional<String> answer(Slot slot, String typed) {
        var text = typed.strip().equals(NOT_REPORTED) ? ConditionText.NOT_REPORTED : typed.strip();
        var refusal = refusal(slot, text);
        if (refusal.isEmpty()) {
            given.put(slot, text);
        }
        return refusal;
    }

    private Optional<String> refusal(Slot slot, String text) {
        if (text.isEmpty()) {
            return needs(slot)
                    ? Optional.of("This has to be answered; type " + NOT_REPORTED
                            + " if you looked for it and the source does not report it, ? for an explanation.")
                    : Optional.empty();
        }
        return switch (slot.kind()) {
            case TEXT, SUGGESTED -> Optional.empty();
            case WORD ->
                slot.allows(text)
                        ? Optional.empty()
                        : Optional.of("`%s` is none of the words; %s."
                                .formatted(text, Suggest.instruction(text, words(slot))));
            case NUMBER ->
                NumberText.isReadable(text)
                        ? Optional.empty()
                        : Optional.of(
                                "`%s` cannot be read as a number, or can be read as two; write digits with one decimal sign."
                                        .formatted(text));
            case DATE ->
                text.matches("\\d{4}(-\\d{2}(-\\d{2})?)?")
                        ? Optional.empty()
                        : Optional.of("`%s` is no date; write year-month-day, such as 2026-09-14.".formatted(text));
        };
    }

    static List<String> words(Slot slot) {
        return slot.words().stream().map(Word::word).toList();
    }

    /** Takes the last answer back. */
    Optional<Slot> back() {
        var last = given.keySet().stream().reduce((a, b) -> b);
        last.ifPresent(given::remove);
        return last;
    }

    /** Forgets an answer, so that it is asked for again. */
    void forget(String heading) {
        given.keySet().removeIf(s -> s.heading().equals(heading));
    }

    /** Everything answered, by heading; what was passed over is empty. */
    Map<String, String> given() {
        var all = new LinkedHashMap<String, String>();
        given.forEach((s, t) -> all.put(s.heading(), t));
        return all;
    }

    /** Takes up answers that were kept. */
    void resume(Map<String, String> kept) {
        // which slots are asked follows from answers before them: go through them as they were asked
        for (var slot = next(); slot.isPresent() && kept.containsKey(slot.get().heading()); slot = next()) {
            given.put(slot.get(), kept.get(slot.get().heading()));
        }
    }

    /** The answers, each at the place that its heading names. */
    Answers answers() {
        var answers = new LinkedHashMap<Slot, Answers.Answer>();
        given.forEach((slot, text) -> {
            if (!text.isEmpty()) {
                answers.put(slot, new Answers.Answer(text, Span.startOf(slot.heading())));
            }
        });
        return new Answers(answers, Span.startOf(Interview.RECORD));
    }
}
