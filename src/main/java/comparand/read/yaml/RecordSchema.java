package comparand.read.yaml;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import comparand.model.library.DeviceRecord;
import comparand.model.library.DossierRecord;
import comparand.model.library.MetricRecord;
import comparand.model.library.ScreeningRecord;
import comparand.model.library.SourceRecord;
import comparand.model.library.StudyRecord;
import comparand.model.template.CommitteeTemplate;
import comparand.model.template.ManuscriptTemplate;
import comparand.model.template.PageTemplate;
import comparand.model.template.TalkTemplate;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The JSON Schema (draft 2020-12) of each kind of record, read off the same shapes the binder uses, so that an editor
 * completes and checks what this program reads.
 */
public final class RecordSchema {

    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private final ObjectNode definitions = MAPPER.createObjectNode();

    private RecordSchema() {}

    /** The schemas by file name. */
    public static Map<String, String> all() {
        var schemas = new LinkedHashMap<String, String>();
        schemas.put("device.schema.json", of(DeviceRecord.class, "device"));
        schemas.put("source.schema.json", of(SourceRecord.class, "source"));
        schemas.put("metric.schema.json", of(MetricRecord.class, "metric"));
        schemas.put("study.schema.json", of(StudyRecord.class, "study"));
        schemas.put("screening.schema.json", of(ScreeningRecord.class, "screening"));
        schemas.put("dossier.schema.json", of(DossierRecord.class, "dossier"));
        schemas.put("talk.schema.json", of(TalkTemplate.class, "talk template"));
        schemas.put("committee.schema.json", of(CommitteeTemplate.class, "committee template"));
        schemas.put("page.schema.json", of(PageTemplate.class, "page template"));
        schemas.put("manuscript.schema.json", of(ManuscriptTemplate.class, "manuscript template"));
        return schemas;
    }

    private static String of(Class<? extends Record> type, String name) {
        var schema = new RecordSchema();
        var root = MAPPER.createObjectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("title", "Comparand " + name + " record");
        root.setAll(schema.node(Shape.of(type)));
        root.set("$defs", schema.definitions);
        return root.toPrettyString() + "\n";
    }

    private ObjectNode node(Shape shape) {
        var node = MAPPER.createObjectNode();
        if (shape instanceof Shape.Single single) {
            single(single.type(), node);
        } else if (shape instanceof Shape.Many many) {
            node.put("type", "array").set("items", node(many.item()));
            if (many.atLeast() > 0) {
                node.put("minItems", many.atLeast());
            }
        } else if (shape instanceof Shape.AloneOrMany either) {
            var list = MAPPER.createObjectNode();
            list.put("type", "array").put("minItems", 1).set("items", node(either.item()));
            node.putArray("anyOf").add(node(either.item())).add(list);
        } else if (shape instanceof Shape.Open open) {
            node.put("type", "object").set("additionalProperties", node(open.value()));
        } else if (shape instanceof Shape.Maybe maybe) {
            return node(maybe.value());
        } else {
            node.put("$ref", "#/$defs/" + define((Shape.Fields) shape));
        }
        return node;
    }

    /**
     * A text; editors read bare numbers, dates and yes as such before they look here, so those types are allowed where the
     * text may look like one.
     */
    private static void single(ScalarType<?> type, ObjectNode node) {
        if (type.words().isEmpty()) {
            node.putArray("type").add("string").add("number").add("boolean");
            type.pattern().ifPresent(p -> node.put("pattern", p));
            type.pattern().ifPresent(p -> node.putArray("examples").add(type.example()));
        } else {
            var words = node.putArray("enum");
            type.words().forEach(w -> {
                words.add(w);
                // yes and no are read as true and false by editors that follow YAML 1.1
                if (w.equals("yes") || w.equals("no")) {
                    words.add(w.equals("yes"));
                }
            });
        }
    }

    private String define(Shape.Fields shape) {
        var name = shape.type().getSimpleName();
        if (!definitions.has(name)) {
            var node = definitions.putObject(name);
            if (!shape.meaning().isEmpty()) {
                node.put("description", shape.meaning());
            }
            node.put("type", "object").put("additionalProperties", false);
            var properties = node.putObject("properties");
            var required = MAPPER.createArrayNode();
            for (var field : shape.fields()) {
                var property = node(field.shape());
                property.put("description", field.meaning());
                properties.set(field.key(), property);
                if (field.required()) {
                    required.add(field.key());
                }
            }
            node.set("required", required);
            if (!shape.exactlyOne().isEmpty()) {
                var choices = node.putArray("oneOf");
                shape.exactlyOne()
                        .forEach(key -> choices.addObject().putArray("required").add(key));
            }
        }
        return name;
    }
}
