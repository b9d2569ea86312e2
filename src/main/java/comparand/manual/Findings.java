package comparand.manual;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.manual.example.Example;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
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

    /** Of many cases that give one finding, a few show what it is about. */
    private static final int MOST_EXAMPLES = 3;

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
                    examples.addAll(cases(
                            List.of(),
                            stream(Resources.yaml("spec/rules/" + code + ".yaml")
                                            .path("finds"))
                                    .toList(),
                            c -> c.path("severity").asText() + c.path("says").asText()));
                }
                examples.addAll(rawData.getOrDefault(code, List.of()));
                add(new Finding(
                        code,
                        rule.path("group").asText(),
                        rule.path("checks").asText(),
                        rule.path("why").asText(),
                        rule.path("instead").asText(),
                        examples,
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
                        examples,
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
            var byCode = new LinkedHashMap<String, List<JsonNode>>();
            stream(file.path("cases"))
                    .filter(c -> c.has("finds"))
                    .forEach(c -> byCode.computeIfAbsent(
                                    c.path("finds").path("code").asText(), k -> new ArrayList<>())
                            .add(c));
            byCode.forEach((code, cases) -> rawData.computeIfAbsent(code, k -> new ArrayList<>())
                    .addAll(cases(
                            steps(file.path("given")),
                            cases,
                            c -> c.path("finds").path("says").asText())));
        }
    }

    /** Of the cases that give a finding, the first for each sentence; cases that say the same show nothing new. */
    private static List<Example> cases(
            List<JsonNode> given, List<JsonNode> cases, Function<JsonNode, String> sentence) {
        var seen = new TreeSet<String>();
        return cases.stream()
                .filter(c -> seen.add(FindingShown.alike(sentence.apply(c))))
                .limit(MOST_EXAMPLES)
                .map(c -> new Example(given, steps(c.path("edits")), false))
                .toList();
    }

    private void add(Finding finding) {
        if (all.put(finding.code(), finding) != null) {
            throw new IllegalStateException("two texts on the finding " + finding.code());
        }
    }

    private static List<JsonNode> steps(JsonNode list) {
        return stream(list).toList();
    }

    private static Stream<JsonNode> stream(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false);
    }
}
