package comparand.manual;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** A page for every kind of record and template: each key with its meaning, what may stand there and a line that is read. */
final class RecordPages {

    static final String FOLDER = "records/";
    static final String FIRST = FOLDER + "index.html";

    /** Where each kind lies in a library, and what it is. */
    private static final Map<String, String> PLACES = places();

    private final String kind;
    private final JsonNode schema;
    private final RecordExamples examples;
    /** Where a kind of entry is first met, by its type. */
    private final Map<String, String> paths = new LinkedHashMap<>();

    private RecordPages(String kind, JsonNode schema, RecordExamples examples) {
        this.kind = kind;
        this.schema = schema;
        this.examples = examples;
        discover(type(schema), "");
    }

    private static Map<String, String> places() {
        var places = new LinkedHashMap<String, String>();
        places.put("device", "`devices/NAME.yaml`: a device that is evaluated or compared with");
        places.put("source", "`sources/NAME.yaml`: a published source and the values it prints");
        places.put("study", "`studies/NAME/study.yaml`: a local study, and what each column of its raw files means");
        places.put("metric", "`metrics/NAME.yaml`: a metric that the tool does not ship");
        places.put("screening", "`screening/NAME.yaml`: what was searched, found, left out and included");
        places.put("dossier", "`dossiers/NAME.yaml`: one question, with margins fixed before the results were seen");
        places.put("talk", "`templates/talk.yaml`: what the slides contain");
        places.put("committee", "`templates/committee.yaml`: what the brief of a committee contains");
        places.put("page", "`templates/page.yaml`: what the page to explore contains");
        places.put("manuscript", "`templates/manuscript.yaml`: what the draft of a paper contains");
        return places;
    }

    /**
     * All kinds.
     *
     * @param schemas JSON Schemas by file name, such as {@code device.schema.json}
     * @param examples lines of records that were read before
     */
    static List<Page> of(Map<String, JsonNode> schemas, RecordExamples examples) {
        var pages = new ArrayList<Page>();
        pages.add(list());
        PLACES.keySet().forEach(kind -> pages.add(new RecordPages(kind, schema(schemas, kind), examples).page()));
        return pages;
    }

    private static JsonNode schema(Map<String, JsonNode> schemas, String kind) {
        var schema = schemas.get(kind + ".schema.json");
        if (schema == null) {
            throw new IllegalArgumentException("there is no schema of a " + kind);
        }
        return schema;
    }

    /** The kind of entry that a reference leads to. */
    static String type(JsonNode shape) {
        return shape.path("$ref").asText().replace("#/$defs/", "");
    }

    private static Page list() {
        var out = new Html();
        out.p(
                "A library is a folder of records, one file each, in plain text: a key, a colon and what belongs to it, further keys"
                        + " indented below. `comparand start DIR` writes one of each kind with comments, and a JSON Schema of each for your"
                        + " editor. A record is called as its file is.");
        out.items(PLACES.entrySet().stream()
                .map(e -> Html.link(e.getKey() + ".html", title(e.getKey())) + ": " + Html.said(e.getValue()))
                .toList());
        out.h2("How values are written");
        out.items(List.of(
                Html.said(
                        "A quantity is a number and its unit as printed: `72.4 mmHg`. The decimal sign is a point unless the source"
                                + " says `decimal: comma`; thousands are not grouped."),
                Html.said("A range has two ends: `0.1 to 1.5 L/min`. A band has a middle: `12 ± 1 g/dL`."),
                Html.said("A day is `2026-09-14`; where less is known, `2026-09` or `2026`."),
                Html.said("What a source does not say is written `not reported`; it is never left out."),
                Html.said("A text with a colon, a comma or a sign such as `#` stands in quotes: `\"T1-T2: a note\"`."),
                Html.said("Behind ` # ` stands a remark that is not read.")));
        return new Page(
                FIRST,
                FIRST,
                "Records",
                "Every kind of record, every key, what may stand there.",
                out.toString(),
                List.of());
    }

    private static String title(String kind) {
        return PLACES.getOrDefault(kind, "").contains("templates/")
                ? "Template of the " + kind
                : "Record of a " + kind.replace("screening", "log of screening");
    }

    private void discover(String type, String path) {
        if (paths.putIfAbsent(type, path) != null) {
            return;
        }
        schema.path("$defs")
                .path(type)
                .path("properties")
                .properties()
                .forEach(e -> inner(e.getValue())
                        .ifPresent(t -> discover(t, (path.isEmpty() ? "" : path + " › ") + e.getKey())));
    }

    private static Optional<String> inner(JsonNode shape) {
        if (shape.has("$ref")) {
            return Optional.of(type(shape));
        }
        var below = shape.has("items")
                ? shape.path("items")
                : shape.has("anyOf") ? shape.path("anyOf").get(0) : shape.path("additionalProperties");
        return below.isObject() ? inner(below) : Optional.empty();
    }

    private Page page() {
        var out = new Html();
        var terms = new ArrayList<Page.Term>();
        out.p(PLACES.getOrDefault(kind, "") + ".");
        paths.forEach((type, path) -> section(type, path, out, terms));
        return new Page(FOLDER + kind + ".html", FIRST, title(kind), "", out.toString(), terms);
    }

    private void section(String type, String path, Html out, List<Page.Term> terms) {
        var shape = schema.path("$defs").path(type);
        out.h2(path.isEmpty() ? "Keys" : "`" + path.replace(" › ", "` › `") + "`", anchor(path));
        if (shape.has("description")) {
            out.p(Html.sentence(shape.path("description").asText()));
        }
        var choice = stream(shape.path("oneOf"))
                .map(o -> o.path("required").path(0).asText())
                .toList();
        if (!choice.isEmpty()) {
            out.p("Exactly one of: " + choice.stream().map(k -> "`" + k + "`").collect(Collectors.joining(", ")) + ".");
        }
        var required = stream(shape.path("required")).map(JsonNode::asText).toList();
        out.raw("<dl class=\"keys\">");
        shape.path("properties").properties().forEach(e -> {
            var id = "key-" + (path.isEmpty() ? "" : anchor(path) + "-") + Html.anchor(e.getKey());
            terms.add(new Page.Term(e.getKey() + ", of a " + kind, id));
            var state = required.contains(e.getKey())
                    ? "required"
                    : choice.contains(e.getKey()) ? "one of them is required" : "may be left out";
            out.raw("<div id=\"%s\"><dt>%s <span class=\"state\">%s</span></dt>"
                    .formatted(id, Html.code(e.getKey()), state));
            out.raw("<dd><p>%s</p>"
                    .formatted(Html.said(
                            Html.sentence(e.getValue().path("description").asText()))));
            out.raw("<p class=\"written\">%s</p>".formatted(Html.sentence(written(e.getValue()))));
            examples.of(type, e.getKey())
                    .ifPresent(l -> out.pre(l.lines()).raw("<p class=\"from\">%s</p>".formatted(Html.text(l.file()))));
            out.raw("</dd></div>");
        });
        out.raw("</dl>");
    }

    private static String anchor(String path) {
        return path.isEmpty() ? "keys" : Html.anchor(path);
    }

    /** What may stand behind a key, as HTML. */
    private String written(JsonNode shape) {
        if (shape.has("$ref")) {
            var path = paths.getOrDefault(type(shape), "");
            return "further keys: <a href=\"#%s\">%s</a>".formatted(anchor(path), Html.text(path));
        }
        if (shape.has("enum")) {
            var words = stream(shape.path("enum"))
                    .filter(JsonNode::isTextual)
                    .map(w -> Html.code(w.asText()))
                    .toList();
            return words.size() == 1 ? words.get(0) : "one of " + String.join(", ", words);
        }
        if (shape.has("anyOf")) {
            return written(shape.path("anyOf").get(0)) + "; or a list of such";
        }
        if (shape.has("items")) {
            return (shape.path("minItems").asInt(0) > 0 ? "a list with at least one entry; each " : "a list; each ")
                    + written(shape.path("items"));
        }
        if (shape.path("additionalProperties").isObject()) {
            return "names of your choice, each with " + written(shape.path("additionalProperties"));
        }
        return shape.has("examples")
                ? "written as " + Html.code(shape.path("examples").get(0).asText())
                : "a text";
    }

    private static Stream<JsonNode> stream(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false);
    }
}
