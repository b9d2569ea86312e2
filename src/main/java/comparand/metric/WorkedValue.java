package comparand.metric;

import static java.util.Objects.requireNonNull;

import comparand.unit.Printed;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Inputs and the result that must come out of them, to within half a unit of its last printed digit.
 *
 * @param inputs by input id, as quantities with units; one per row, separated by {@code ;}, where several rows are gathered
 * @param definition the variants it follows where they are not the standard ones
 */
public record WorkedValue(Map<String, String> inputs, Definition definition, Printed result, Citation citation) {

    public WorkedValue {
        inputs = Map.copyOf(inputs);
        requireNonNull(definition, "definition");
        requireNonNull(result, "result");
        requireNonNull(citation, "citation");
    }

    /** By the standard definition, from inputs given as {@code id=quantity}. */
    static WorkedValue of(String result, Citation citation, String... inputs) {
        var byId = new TreeMap<String, String>();
        for (var input : inputs) {
            int sign = input.indexOf('=');
            byId.put(input.substring(0, sign), input.substring(sign + 1));
        }
        return new WorkedValue(byId, Definition.NONE, Printed.of(result), citation);
    }

    WorkedValue under(String aspect, String variant) {
        return new WorkedValue(inputs, definition.with(aspect, List.of(variant)), result, citation);
    }

    /** The quantities of one input, row by row; empty if it is not among the inputs. */
    public List<Printed> rows(String input) {
        var text = inputs.get(input);
        return text == null
                ? List.of()
                : Arrays.stream(text.split(";"))
                        .map(String::strip)
                        .map(Printed::of)
                        .toList();
    }
}
