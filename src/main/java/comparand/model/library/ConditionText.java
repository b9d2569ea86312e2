package comparand.model.library;

import static java.util.Objects.requireNonNull;

import comparand.unit.Printed;
import comparand.unit.PrintedRange;
import java.util.Optional;

/** A condition as a record states it: a number, a range, a word, or the plain statement that it is not reported. */
public sealed interface ConditionText {

    String NOT_REPORTED = "not reported";

    /** One method per form, so that a new form breaks every place that must read it. */
    interface Cases<R> {
        R amount(Amount condition);

        R between(Between condition);

        R word(Word condition);

        R notReported();
    }

    <R> R fold(Cases<R> cases);

    default boolean isReported() {
        return !(this instanceof NotReported);
    }

    /** As written. */
    String text();

    /** A number with its unit; {@code 12 ± 1 g/dL} keeps the band within which the source held it. */
    record Amount(Printed value, Optional<Printed> plusMinus) implements ConditionText {
        public Amount {
            requireNonNull(value, "value");
            requireNonNull(plusMinus, "plusMinus");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.amount(this);
        }

        @Override
        public String text() {
            return plusMinus.map(band -> value.number() + " ± " + band).orElse(value.toString());
        }
    }

    /** Two ends: {@code 10 to 12 g/dL}. */
    record Between(PrintedRange range) implements ConditionText {
        public Between {
            requireNonNull(range, "range");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.between(this);
        }

        @Override
        public String text() {
            return range.toString();
        }
    }

    /** A word: {@code bovine}. */
    record Word(String text) implements ConditionText {
        public Word {
            requireNonNull(text, "text");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.word(this);
        }
    }

    /** Looked for, and not found in the source. */
    record NotReported() implements ConditionText {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.notReported();
        }

        @Override
        public String text() {
            return NOT_REPORTED;
        }
    }

    /** Reads off the number of a stated condition, if it is one. */
    default Optional<Printed> asNumber() {
        return this instanceof Amount amount ? Optional.of(amount.value()) : Optional.empty();
    }
}
