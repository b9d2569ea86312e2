package comparand.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;

/** Two trees of data are the same: texts to the letter, numbers to nine digits. */
final class SameData {

    /** Sums in another order differ by some units in the sixteenth digit; a wrong formula by far more than this. */
    private static final double RELATIVE = 1e-9;

    private SameData() {}

    static void check(String what, JsonNode is, JsonNode expected) {
        if (expected.isNumber() && is.isNumber()) {
            assertThat(is.asDouble())
                    .as(what)
                    .isCloseTo(expected.asDouble(), within(RELATIVE * Math.max(Math.abs(expected.asDouble()), 1e-300)));
        } else if (expected.isArray() && is.isArray()) {
            assertThat(is).as(what + " gives " + is).hasSameSizeAs(expected);
            for (int i = 0; i < expected.size(); i++) {
                check(what + "[" + i + "]", is.get(i), expected.get(i));
            }
        } else if (expected.isObject() && is.isObject()) {
            assertThat(is.fieldNames())
                    .as(what + " gives " + is)
                    .toIterable()
                    .containsExactlyInAnyOrderElementsOf(() -> expected.fieldNames());
            expected.properties().forEach(f -> check(what + "." + f.getKey(), is.get(f.getKey()), f.getValue()));
        } else {
            assertThat(is).as(what).isEqualTo(expected);
        }
    }
}
