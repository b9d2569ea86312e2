package comparand.reference.format;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import comparand.reference.Name;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Name variables of CSL-JSON. */
final class CslNames {

    private CslNames() {}

    static List<Name> read(JsonNode list) {
        var names = new ArrayList<Name>();
        if (list.isArray()) {
            list.forEach(n -> name(n).ifPresent(names::add));
        } else {
            name(list).ifPresent(names::add);
        }
        return names;
    }

    private static Optional<Name> name(JsonNode node) {
        if (node.isTextual()) {
            return CommaName.read(node.asText());
        }
        var family = text(node, "family");
        var given = text(node, "given");
        // registration agencies put a body under `name`
        var literal = text(node, "literal").isEmpty() ? text(node, "name") : text(node, "literal");
        if (family.isEmpty()) {
            var body = literal.isEmpty() ? given : literal;
            return body.isEmpty() ? Optional.empty() : Optional.of(Name.body(body));
        }
        return Optional.of(new Name(
                family,
                given,
                text(node, "non-dropping-particle"),
                text(node, "dropping-particle"),
                text(node, "suffix"),
                ""));
    }

    private static String text(JsonNode node, String field) {
        var value = node.get(field);
        return value != null && value.isValueNode() && !value.isNull() ? Plain.text(value.asText()) : "";
    }

    static ObjectNode json(Name name) {
        var node = CslReader.JSON.createObjectNode();
        put(node, "family", name.family());
        put(node, "given", name.given());
        put(node, "non-dropping-particle", name.particle());
        put(node, "dropping-particle", name.dropping());
        put(node, "suffix", name.suffix());
        put(node, "literal", name.literal());
        return node;
    }

    private static void put(ObjectNode node, String field, String text) {
        if (!text.isEmpty()) {
            node.put(field, text);
        }
    }
}
