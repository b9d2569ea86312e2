package comparand.intake;

import comparand.document.form.FormList.Word;
import comparand.document.record.Entry;
import comparand.metric.Condition;
import comparand.model.library.ConditionText;
import comparand.unit.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** One condition under which values were obtained: a number with its unit, one of its words, or free words. */
final class ConditionPiece implements Piece {

    /** What a condition means for the value at hand. */
    enum Weight {
        /** It must be stated, or said to be not reported. */
        DECIDES,
        /** It is asked for, and may stay empty. */
        USEFUL,
        /** It is not asked for. */
        NONE
    }

    static final String GROUP = "Conditions";
    private static final Word NOT_REPORTED =
            new Word(ConditionText.NOT_REPORTED, "looked for in the source and not found");

    private final Condition condition;
    private final String path;
    private final Slot slot;
    private final Optional<Slot> unit;
    private final Function<Answers, Weight> weight;

    /**
     * A condition.
     *
     * @param weight what it means for the value that was answered so far
     */
    ConditionPiece(Condition condition, Function<Answers, Weight> weight) {
        this.condition = condition;
        this.path = "conditions/" + condition.id();
        this.weight = weight;
        this.slot = slot(condition);
        this.unit = condition.unit().filter(u -> !u.spelling().isEmpty()).map(u -> unit(condition, u));
    }

    private static Slot slot(Condition condition) {
        var question = "Which %s?".formatted(condition.name());
        if (condition.isNumber()) {
            return Slot.number(
                    GROUP,
                    condition.name(),
                    question,
                    "Digits with decimal point or comma, two with ± or to between them; or: not reported. Empty if the sheet Sources says"
                            + " it for the whole source.");
        }
        if (condition.words().isEmpty()) {
            return Slot.text(GROUP, condition.name(), question, "In words, as printed; or: not reported.");
        }
        return Slot.word(
                GROUP,
                condition.name(),
                question,
                "One of the list; not reported if the source does not say. Empty if the sheet Sources says it.",
                Stream.concat(condition.words().stream().map(w -> new Word(w, "")), Stream.of(NOT_REPORTED))
                        .toList());
    }

    private static Slot unit(Condition condition, Unit unit) {
        return Slot.suggested(
                GROUP,
                condition.name() + ", unit",
                "In which unit?",
                "The unit as printed.",
                List.of(new Word(unit.spelling(), "")));
    }

    @Override
    public List<Slot> slots() {
        return Stream.concat(Stream.of(slot), unit.stream()).toList();
    }

    @Override
    public List<Slot> asked(Answers soFar) {
        if (weight.apply(soFar) == Weight.NONE) {
            return List.of();
        }
        return unit.map(u -> new Quantity(slot, u).asked(soFar)).orElse(List.of(slot));
    }

    @Override
    public boolean needs(Slot one, Answers soFar) {
        return weight.apply(soFar) == Weight.DECIDES;
    }

    @Override
    public void write(Draft draft) {
        if (unit.isPresent()) {
            new Quantity(slot, unit.get()).in(draft).ifPresent(q -> draft.put(path, q, slot));
        } else {
            draft.written(slot).ifPresent(t -> draft.put(path, t, slot));
        }
    }

    @Override
    public void read(Entry.Fields record, Map<Slot, String> cells) {
        Paths.text(record, path).ifPresent(t -> {
            if (unit.isPresent()) {
                new Quantity(slot, unit.get()).split(t, cells);
            } else {
                cells.put(slot, t);
            }
        });
    }

    @Override
    public List<String> paths() {
        return List.of(path);
    }

    /** Whether a condition is among names with commas between them. */
    static boolean isNamed(Condition condition, Optional<String> names) {
        return names.stream()
                .flatMap(t -> Arrays.stream(t.split(",", -1)))
                .map(String::strip)
                .anyMatch(n -> n.equals(condition.id()) || n.equals(condition.name()));
    }

    Condition condition() {
        return condition;
    }

    Slot slot() {
        return slot;
    }
}
