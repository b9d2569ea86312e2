package comparand.metric;

import static java.util.Objects.requireNonNull;

import comparand.unit.Printed;
import java.util.Map;

/**
 * Inputs and the result that must come out of them, to within half a unit of its last printed digit.
 *
 * @param inputs by input id, as quantities with units
 */
public record WorkedValue(Map<String, String> inputs, Definition definition, Printed result, Citation citation) {

    public WorkedValue {
        inputs = Map.copyOf(inputs);
        requireNonNull(definition, "definition");
        requireNonNull(result, "result");
        requireNonNull(citation, "citation");
    }
}
