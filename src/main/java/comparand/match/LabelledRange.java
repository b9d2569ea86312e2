package comparand.match;

import comparand.metric.Condition;
import comparand.metric.Effect;
import comparand.metric.Role;
import comparand.model.Circumstance;
import comparand.model.Comparand;
import comparand.model.ConditionVerdict;
import comparand.model.ConditionVerdict.Mark;
import comparand.model.ConditionVerdict.Subject;
import comparand.model.Library;
import comparand.model.library.LabelRecord;
import comparand.unit.Unit;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether a result was obtained within what its device's label allows. Outside of it, it is shown and not compared. */
final class LabelledRange {

    private final Library library;

    LabelledRange(Library library) {
        this.library = library;
    }

    /** A verdict only where one side lies outside its label. */
    Optional<ConditionVerdict> verdict(Comparand ours, Comparand theirs) {
        var mine = outside(ours);
        var other = outside(theirs);
        return mine.isEmpty() && other.isEmpty()
                ? Optional.empty()
                : Optional.of(new ConditionVerdict(
                        Subject.LABEL,
                        "labelled-range",
                        "use within the label",
                        "label",
                        Role.DECIDES,
                        Mark.DIFFERS,
                        mine.orElse("within"),
                        other.orElse("within"),
                        "within the label",
                        Effect.NOT_PREDICTABLE,
                        ""));
    }

    /** What is outside, in words: {@code 1.5 L/min, labelled 0.1 to 1.2 L/min}. */
    Optional<String> outside(Comparand comparand) {
        return library.device(comparand.device()).stream()
                .flatMap(d -> d.label().stream())
                .flatMap(limit -> beyond(comparand, limit))
                .findFirst();
    }

    private Stream<String> beyond(Comparand comparand, LabelRecord limit) {
        var condition = library.catalogue().condition(limit.limits().value());
        var unit = condition.flatMap(Condition::unit).orElse(Unit.ONE);
        var range = limit.range().value();
        return condition
                .map(c -> comparand.condition(c.id()))
                .filter(c -> c instanceof Circumstance.Amount amount
                        && (amount.value() < range.low().in(unit) * (1 - 1e-9)
                                || amount.value() > range.high().in(unit) * (1 + 1e-9)))
                .map(c -> c.text() + ", labelled " + range)
                .stream();
    }
}
