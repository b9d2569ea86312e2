package comparand.manual;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.manual.example.Example;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * Every finding the tool can give. Rules on records and on rows say in their own source what they check; the build takes it
 * from there. The others have a line each under {@code findings/}. Examples are those the tests run, and those listed there.
 */
final class Findings {

    /** Files with a line for each finding that is no rule, in the order of the manual. */
    static final List<String> FILES = List.of(
            "1-files.yaml",
            "2-records.yaml",
            "3-metrics.yaml",
            "4-raw-data.yaml",
            "5-workbooks.yaml",
            "6-rows-left-out.yaml",
            "7-forms.yaml",
            "8-references.yaml",
            "9-outputs.yaml");

    /** Cases on raw data that the tests run, several codes a file. */
    private static final List<String> RAW_DATA =
            List.of("mapping.yaml", "files.yaml", "cells.yaml", "rows.yaml", "quality.yaml");

    /** Of many cases that give one finding, the first show what it is about. */
    private static final int MOST_EXAMPLES = 4;

    private final Map<String, Finding> all = new LinkedHashMap<>();
    private final Map<String, List<Example>> rawData = new LinkedHashMap<>();

    private Findings() {
        rawDataCases();
        var rules = Resources.yaml("findings/rules.json");
        records("1-files.yaml", "2-records.yaml");
        rules(rules, "Records: ");
        records("3-metrics.yaml", "4-raw-data.yaml");
        rules(rules, "Rows of raw data");
        records("5-workbooks.yaml", "6-rows-left-out.yaml", "7-forms.yaml", "8-references.yaml", "9-outputs.yaml");
    }

    /** By code, in the order of the manual. */
    static Map<String, Finding> all() {
        return Collections.unmodifiableMap(new Findings().all);
    }

    private void rules(JsonNode rules, String group) {
        for (var rule : rules) {
            if (rule.path("group").asText().startsWith(group)) {
                var code = rule.path("code").asText();
                var examples = new ArrayList<Example>();
                if (group.startsWith("Records")) {
                    stream(Resources.yaml("spec/rules/" + code + ".yaml").path("finds"))
                            .forEach(c -> examples.add(new Example(List.of(), steps(c.path("edits")), false)));
                }
                examples.addAll(rawData.getOrDefault(code, List.of()));
                add(new Finding(
                        code,
                        rule.path("group").asText(),
                        rule.path("checks").asText(),
                        rule.path("why").asText(),
                        rule.path("instead").asText(),
                        few(examples),
                        ""));
            }
        }
    }

    private void records(String... files) {
        for (var name : files) {
            var file = Resources.yaml("findings/" + name);
            for (var entry : file.path("findings")) {
                var code = entry.path("code").asText();
                var examples = new ArrayList<Example>();
                stream(entry.path("examples")).forEach(e -> examples.add(example(e, file.path("givens"))));
                if (entry.path("no-example").isMissingNode()) {
                    examples.addAll(rawData.getOrDefault(code, List.of()));
                }
                add(new Finding(
                        code,
                        file.path("group").asText(),
                        entry.path("checks").asText(),
                        "",
                        "",
                        few(examples),
                        entry.path("no-example").asText("")));
            }
        }
    }

    private static Example example(JsonNode entry, JsonNode givens) {
        var given = entry.path("given").isMissingNode()
                ? List.<JsonNode>of()
                : steps(givens.path(entry.path("given").asText()));
        return new Example(given, steps(entry.path("steps")), entry.has("row-log"));
    }

    private void rawDataCases() {
        for (var name : RAW_DATA) {
            var file = Resources.yaml("spec/raw-data/" + name);
            for (var c : file.path("cases")) {
                if (c.has("finds")) {
                    rawData.computeIfAbsent(c.path("finds").path("code").asText(), k -> new ArrayList<>())
                            .add(new Example(steps(file.path("given")), steps(c.path("edits")), false));
                }
            }
        }
    }

    private void add(Finding finding) {
        if (all.put(finding.code(), finding) != null) {
            throw new IllegalStateException("two texts on the finding " + finding.code());
        }
    }

    private static List<Example> few(Collection<Example> examples) {
        return examples.stream().limit(MOST_EXAMPLES).toList();
    }

    private static List<JsonNode> steps(JsonNode list) {
        return stream(list).toList();
    }

    private static Stream<JsonNode> stream(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false);
    }
}
