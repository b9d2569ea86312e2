package comparand.read.results;

import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;

/**
 * Whether JSON has the structure that the record types publish: keys in kebab case, what is optional absent or there, nothing
 * null. Keys that are not known are left alone, as a later version of the same format may have more.
 */
final class ResultShape {

    private ResultShape() {}

    /** The first place that is not as published: what is wrong there, as a clause; or nothing. */
    static Optional<String> fault(JsonNode node, Type type, String path) {
        if (type instanceof ParameterizedType generic) {
            var raw = generic.getRawType();
            var arguments = generic.getActualTypeArguments();
            if (raw == List.class) {
                return node.isArray() ? ofElements(node, arguments[0], path) : other(path, "a list");
            }
            if (raw == SortedMap.class) {
                return node.isObject() ? ofEntries(node, arguments[1], path) : other(path, "an object");
            }
            return fault(node, arguments[0], path);
        }
        if (type instanceof Class<?> plain && plain.isRecord()) {
            return node.isObject() ? ofComponents(node, plain, path) : other(path, "an object");
        }
        return scalar(node, type, path);
    }

    private static Optional<String> ofElements(JsonNode list, Type type, String path) {
        for (int i = 0; i < list.size(); i++) {
            var fault = fault(list.get(i), type, path + "[" + i + "]");
            if (fault.isPresent()) {
                return fault;
            }
        }
        return Optional.empty();
    }

    private static Optional<String> ofEntries(JsonNode map, Type type, String path) {
        return map.properties().stream()
                .flatMap(e -> fault(e.getValue(), type, path + "." + e.getKey()).stream())
                .findFirst();
    }

    private static Optional<String> ofComponents(JsonNode object, Class<?> type, String path) {
        for (var component : type.getRecordComponents()) {
            var key = key(component);
            var at = path.isEmpty() ? key : path + "." + key;
            var child = object.get(key);
            boolean optional = component.getType() == Optional.class;
            var fault = child != null
                    ? fault(child, component.getGenericType(), at)
                    : optional ? Optional.<String>empty() : Optional.of("`%s` is missing".formatted(at));
            if (fault.isPresent()) {
                return fault;
            }
        }
        return Optional.empty();
    }

    private static Optional<String> scalar(JsonNode node, Type type, String path) {
        if (type == String.class) {
            return node.isTextual() ? Optional.empty() : other(path, "a text");
        }
        if (type == boolean.class || type == Boolean.class) {
            return node.isBoolean() ? Optional.empty() : other(path, "true or false");
        }
        if (type == int.class || type == Integer.class) {
            return node.canConvertToInt() && node.isIntegralNumber() ? Optional.empty() : other(path, "a whole number");
        }
        if (type == double.class || type == Double.class) {
            return node.isNumber() ? Optional.empty() : other(path, "a number");
        }
        throw new IllegalStateException("results hold no " + type);
    }

    private static Optional<String> other(String path, String expected) {
        return Optional.of("`%s` is not %s".formatted(path.isEmpty() ? "the whole" : path, expected));
    }

    private static String key(RecordComponent component) {
        return component.getName().replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    }
}
