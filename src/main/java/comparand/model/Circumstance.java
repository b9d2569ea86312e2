package comparand.model;

import static java.util.Objects.requireNonNull;

import comparand.metric.Condition;
import comparand.model.library.ConditionText;
import comparand.unit.Unit;
import java.util.Optional;

/** A condition of a comparand, in the unit its {@code Condition} is kept in, with the text it is printed as. */
public sealed interface Circumstance {

    /** As printed: in the writer's own unit for a published value. */
    String text();

    <R> R fold(Cases<R> cases);

    /** One method per form, so that a new form breaks every place that must compare it. */
    interface Cases<R> {
        R amount(Amount amount);

        R between(Between between);

        R word(Word word);

        R notReported();
    }

    /**
     * A condition as a record states it, in the unit the condition is kept in.
     *
     * @throws IllegalArgumentException if its unit does not fit: the checker has let a fault through
     */
    static Circumstance of(Condition condition, ConditionText text) {
        var unit = condition.unit().orElse(Unit.ONE);
        return text.fold(new ConditionText.Cases<>() {
            @Override
            public Circumstance amount(ConditionText.Amount a) {
                return condition.isNumber() ? new Amount(a.value().in(unit), a.text()) : new Word(a.text());
            }

            @Override
            public Circumstance between(ConditionText.Between b) {
                return new Between(b.range().low().in(unit), b.range().high().in(unit), b.text());
            }

            @Override
            public Circumstance word(ConditionText.Word w) {
                return new Word(w.text());
            }

            @Override
            public Circumstance notReported() {
                return new NotReported();
            }
        });
    }

    /** The number, where it is one. */
    default Optional<Amount> amount() {
        return this instanceof Amount amount ? Optional.of(amount) : Optional.empty();
    }

    default boolean isReported() {
        return !(this instanceof NotReported);
    }

    /** A number. */
    record Amount(double value, String text) implements Circumstance {
        public Amount {
            requireNonNull(text, "text");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.amount(this);
        }
    }

    /** A range of numbers. */
    record Between(double low, double high, String text) implements Circumstance {
        public Between {
            requireNonNull(text, "text");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.between(this);
        }
    }

    /** A word. */
    record Word(String text) implements Circumstance {
        public Word {
            requireNonNull(text, "text");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.word(this);
        }
    }

    /** Looked for and not found in the source, or not recorded in the study. */
    record NotReported() implements Circumstance {
        @Override
        public String text() {
            return "not reported";
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.notReported();
        }
    }
}
