package comparand.manual;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayDeque;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Lines of records that are read as they stand, by the kind of entry and the key they show. */
final class RecordExamples {

    /** More lines show no more. */
    private static final int MOST_LINES = 5;

    /**
     * A key as a record has it.
     *
     * @param lines from the key to the end of its value
     * @param file the record
     */
    record Line(String lines, String file) {}

    private final Map<String, Line> found = new HashMap<>();

    /** Looks through a record for keys that have no example yet. */
    void read(JsonNode schema, String text, String file) {
        var root = new Compose(LoadSettings.builder().build()).composeString(text);
        root.ifPresent(node -> new Walk(schema, text, file).node(schema, node));
    }

    Optional<Line> of(String type, String key) {
        return Optional.ofNullable(found.get(type + "." + key));
    }

    private final class Walk {

        private final JsonNode schema;
        private final int[] signs;
        private final String file;
        private final ArrayDeque<String> types = new ArrayDeque<>();

        Walk(JsonNode schema, String text, String file) {
            this.schema = schema;
            this.signs = text.codePoints().toArray();
            this.file = file;
        }

        void node(JsonNode shape, Node node) {
            if (shape.has("$ref")) {
                var type = RecordPages.type(shape);
                types.push(type);
                fields(type, schema.path("$defs").path(type).path("properties"), node);
                types.pop();
            } else if (shape.has("anyOf")) {
                for (var choice : shape.path("anyOf")) {
                    if (choice.path("type").asText().equals("array") == node instanceof SequenceNode) {
                        node(choice, node);
                    }
                }
            } else if (shape.has("items") && node instanceof SequenceNode list) {
                list.getValue().forEach(n -> node(shape.path("items"), n));
            } else if (shape.has("additionalProperties") && node instanceof MappingNode open) {
                open.getValue().forEach(t -> node(shape.path("additionalProperties"), t.getValueNode()));
            }
        }

        private void fields(String type, JsonNode properties, Node node) {
            if (node instanceof MappingNode mapping) {
                for (var entry : mapping.getValue()) {
                    if (entry.getKeyNode() instanceof ScalarNode key && properties.has(key.getValue())) {
                        found.computeIfAbsent(type + "." + key.getValue(), k -> line(entry));
                        node(properties.path(key.getValue()), entry.getValueNode());
                    }
                }
            }
        }

        private Line line(NodeTuple entry) {
            var start = entry.getKeyNode().getStartMark().orElseThrow();
            var end = entry.getValueNode().getEndMark().orElseThrow();
            var text = new String(signs, start.getIndex(), end.getIndex() - start.getIndex());
            var lines = text.stripTrailing()
                    .replaceAll("(?m)[ ]+#[^\"'\n]*$", "")
                    .replaceAll("\n {" + start.getColumn() + "}", "\n")
                    .lines()
                    .toList();
            var shown = String.join("\n", lines.subList(0, Math.min(MOST_LINES, lines.size())));
            return new Line(lines.size() > MOST_LINES ? shown + "\n…" : shown, file);
        }
    }
}
