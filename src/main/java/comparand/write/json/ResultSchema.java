package comparand.write.json;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import comparand.document.result.ResultSet;
import comparand.document.result.Says;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/** The JSON Schema (draft 2020-12) of {@code results.json}, read off the record types that are written. */
public final class ResultSchema {

    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private final ObjectNode definitions = MAPPER.createObjectNode();
    private final Map<String, Class<?>> defined = new HashMap<>();

    private ResultSchema() {}

    /** The whole schema, as JSON text. */
    public static String text() {
        var schema = new ResultSchema();
        var root = MAPPER.createObjectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("title", "Comparand results");
        root.setAll(schema.type(ResultSet.class));
        root.set("$defs", schema.definitions);
        return root.toPrettyString() + "\n";
    }

    private ObjectNode type(Type type) {
        var node = MAPPER.createObjectNode();
        if (type instanceof ParameterizedType generic) {
            var raw = generic.getRawType();
            var arguments = generic.getActualTypeArguments();
            if (raw == List.class) {
                node.put("type", "array").set("items", type(arguments[0]));
            } else if (raw == SortedMap.class) {
                node.put("type", "object").set("additionalProperties", type(arguments[1]));
            } else {
                return type(arguments[0]);
            }
        } else if (type == String.class) {
            node.put("type", "string");
        } else if (type == boolean.class || type == Boolean.class) {
            node.put("type", "boolean");
        } else if (type == int.class || type == Integer.class) {
            node.put("type", "integer");
        } else if (type == double.class || type == Double.class) {
            node.put("type", "number");
        } else {
            node.put("$ref", "#/$defs/" + define((Class<?>) type));
        }
        return node;
    }

    private String define(Class<?> type) {
        var name = type.getSimpleName();
        var other = defined.putIfAbsent(name, type);
        if (other != null && other != type) {
            throw new IllegalStateException("two kinds of results are called " + name);
        }
        if (!definitions.has(name)) {
            var node = definitions.putObject(name);
            var says = type.getAnnotation(Says.class);
            if (says != null) {
                node.put("description", says.value());
            }
            node.put("type", "object").put("additionalProperties", false);
            var properties = node.putObject("properties");
            var required = node.putArray("required");
            for (var component : type.getRecordComponents()) {
                var key = component.getName().replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
                var property = type(component.getGenericType());
                var meaning = component.getAnnotation(Says.class);
                if (meaning != null) {
                    property.put("description", meaning.value());
                }
                properties.set(key, property);
                if (component.getType() != Optional.class) {
                    required.add(key);
                }
            }
        }
        return name;
    }
}
