package comparand.intake;

import comparand.diag.Diagnostic;
import comparand.model.library.ConditionText;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A number in one slot and its unit in the next. */
record Quantity(Slot number, Slot unit) {

    /** The unit is asked for where a number was given without one. */
    List<Slot> asked(Answers soFar) {
        boolean unitToo = soFar.text(number)
                .filter(t -> !t.equals(ConditionText.NOT_REPORTED) && !NumberText.hasUnit(t))
                .isPresent();
        return unitToo ? List.of(number, unit) : List.of(number);
    }

    /** The two as a record writes them; empty where neither was given or a finding says why not. */
    Optional<String> in(Draft draft) {
        var typed = draft.answers().get(number);
        var of = draft.text(unit);
        if (typed.isEmpty()) {
            if (of.isPresent()) {
                draft.refuse(Diagnostic.stop(
                        "unit-without-number",
                        draft.answers().at(unit),
                        "a unit stands here, and no number in `%s`".formatted(number.heading()),
                        "a unit alone says nothing",
                        "write the number, or `%s`, or empty both cells".formatted(ConditionText.NOT_REPORTED)));
            }
            return Optional.empty();
        }
        var text = typed.get().text();
        if (text.equals(ConditionText.NOT_REPORTED)) {
            return Optional.of(text);
        }
        return NumberText.hasUnit(text)
                ? pasted(draft, typed.get(), of)
                : draft.number(number).map(n -> NumberText.joined(n, of));
    }

    /** A number that was pasted with its unit: taken apart, unless the cell of the unit says otherwise. */
    private Optional<String> pasted(Draft draft, Answers.Answer typed, Optional<String> of) {
        var split = NumberText.split(typed.text());
        if (of.isPresent() && !of.get().equals(split.unit())) {
            draft.refuse(Diagnostic.stop(
                    "unit-twice",
                    typed.at(),
                    "`%s` brings its own unit, and `%s` says %s".formatted(typed.text(), unit.heading(), of.get()),
                    "a number in the wrong unit is wrong by the factor between the two",
                    "write %s here, and its unit into `%s`".formatted(split.number(), unit.heading())));
            return Optional.empty();
        }
        var read = NumberText.read(split.number(), draft.sign());
        if (read.isEmpty()) {
            draft.refuse(NumberText.refused(typed));
            return Optional.empty();
        }
        draft.echo(number, "%s in %s".formatted(read.get(), split.unit()));
        return Optional.of(NumberText.joined(read.get(), Optional.of(split.unit())));
    }

    /** Fills both slots from the text of a record. */
    void split(String text, Map<Slot, String> cells) {
        var split = NumberText.split(text);
        cells.put(number, split.number());
        if (!split.unit().isEmpty()) {
            cells.put(unit, split.unit());
        }
    }
}
