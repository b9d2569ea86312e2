package comparand.metric;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * One way to compute a metric.
 *
 * @param formula in the symbols of its inputs
 * @param gives the variants this way of computing fixes; aspects it leaves open are read from the definition asked for
 */
public record Derivation(
        String formula, List<Input> inputs, Definition gives, Citation citation, Computation computation) {

    public Derivation {
        requireNonNull(gives, "gives");
        requireNonNull(citation, "citation");
        requireNonNull(computation, "computation");
        inputs = List.copyOf(inputs);
        if (formula.isBlank() || inputs.isEmpty()) {
            throw new IllegalArgumentException("a derivation has a formula and inputs");
        }
    }
}
