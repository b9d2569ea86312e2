package comparand.metric;

import static java.util.Objects.requireNonNull;

import java.util.Collections;
import java.util.Map;

/** The numbers a formula is given, each in the unit its {@link Input} names, and the definition it is to follow. */
public record Inputs(Map<String, Double> numbers, Definition definition) {

    public Inputs {
        // not copied: every row of a raw file makes its own
        numbers = Collections.unmodifiableMap(numbers);
        requireNonNull(definition, "definition");
    }

    /**
     * The number of an input.
     *
     * @throws IllegalArgumentException if it was not given: the caller did not look at the formula's inputs
     */
    public double get(String id) {
        var number = numbers.get(id);
        if (number == null) {
            throw new IllegalArgumentException("the formula needs " + id);
        }
        return number;
    }

    /** The number of an input, in the unit it names. */
    public double of(Input input) {
        return get(input.id());
    }

    /** The variant of an aspect the result is to follow, read as a number: {@code 1.34}. */
    public double constant(String aspect) {
        return Double.parseDouble(definition
                .word(aspect)
                .orElseThrow(() -> new IllegalArgumentException("the formula needs the variant of " + aspect)));
    }
}
