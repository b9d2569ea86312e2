package comparand.metric;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;

/**
 * One way to compute a metric.
 *
 * @param formula in the symbols of its inputs
 * @param inputs the quantities it takes; none for an agreed constant
 * @param gives the variants this way of computing fixes; aspects it leaves open are read from the definition asked for
 * @param gathering how the rows of a group become one result
 * @param applies conditions without which the formula must not be used; all must hold
 */
public record Derivation(
        String formula,
        List<Input> inputs,
        Definition gives,
        Citation citation,
        Computation computation,
        Gathering gathering,
        List<Applies> applies) {

    public Derivation {
        requireNonNull(gives, "gives");
        requireNonNull(citation, "citation");
        requireNonNull(computation, "computation");
        requireNonNull(gathering, "gathering");
        inputs = List.copyOf(inputs);
        applies = List.copyOf(applies);
        if (formula.isBlank()) {
            throw new IllegalArgumentException("a derivation has a formula");
        }
    }

    /** A formula applied to each row, under any condition. */
    public Derivation(
            String formula, List<Input> inputs, Definition gives, Citation citation, Computation computation) {
        this(formula, inputs, gives, citation, computation, Gathering.EACH_ROW, List.of());
    }

    /** A formula applied to each row, under any condition, that fixes no variant. */
    static Derivation of(String formula, Citation citation, Computation computation, Input... inputs) {
        return new Derivation(formula, List.of(inputs), Definition.NONE, citation, computation);
    }

    /** What {@code gathering} finds is the result. */
    static Derivation found(String formula, Citation citation, Gathering gathering, Input... inputs) {
        return of(formula, citation, in -> in.get(Gathering.FOUND), inputs).gathered(gathering);
    }

    /** Whether the formula is given {@link Gathering#FOUND} in place of its inputs. */
    public boolean isFound() {
        return gathering instanceof Gathering.Fit
                || gathering instanceof Gathering.Crossing
                || gathering instanceof Gathering.Lowest;
    }

    Derivation giving(String aspect, String variant) {
        return new Derivation(
                formula, inputs, gives.with(aspect, List.of(variant)), citation, computation, gathering, applies);
    }

    Derivation gathered(Gathering other) {
        return new Derivation(formula, inputs, gives, citation, computation, other, applies);
    }

    Derivation onlyWhen(Condition condition, String... words) {
        var all = new ArrayList<>(applies);
        all.add(new Applies(condition, List.of(words)));
        return new Derivation(formula, inputs, gives, citation, computation, gathering, all);
    }
}
