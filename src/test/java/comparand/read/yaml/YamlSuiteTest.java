package comparand.read.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import comparand.diag.Diagnostic;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Every case of the YAML Test Suite: what it says a text means is what is read, letter by letter, or the text is refused with a
 * finding; how many are refused for which reason is written down here.
 */
class YamlSuiteTest {

    private static final Path CASES = Path.of("src/test/resources/yaml-test-suite/cases.json");

    /** A number as the core schema of YAML 1.2.2 (10.3.2) resolves it, but for .inf, .nan and other bases. */
    private static final Pattern NUMBER = Pattern.compile("[-+]?(\\.\\d+|\\d+(\\.\\d*)?)([eE][-+]?\\d+)?");

    private static final ObjectMapper JSON = new ObjectMapper();

    /** What the YAML library underneath takes, though the specification does not. */
    private static final List<String> READ_ALL_THE_SAME =
            List.of("9C9N", "9JBA", "CVW2", "DK95/1", "QB6E", "SU5Z", "Y79Y/3");

    /** Blanks at the end of a file, without a line end, in a text that keeps its line ends: read as nothing, not as a line end. */
    private static final List<String> READ_OTHERWISE = List.of("JEF9/2");

    private static final int READ = 190;

    /**
     * Anchors and the aliases behind them, tags, keys that are no words, several documents, signs nobody sees: no record has
     * them. The tabs, and what cannot be read, are YAML that the library underneath refuses, at its place: empty keys, keys over two
     * lines and values that begin with a colon in brackets, tabs on lines of their own, and what stands behind the end of a
     * document.
     */
    private static final Map<String, Integer> REFUSED = Map.of(
            "text-sign-unprintable", 1,
            "yaml-anchor", 27,
            "yaml-key", 13,
            "yaml-several-documents", 9,
            "yaml-tab", 3,
            "yaml-tag", 31,
            "yaml-unreadable", 33);

    private record Reading(Optional<Node> root, List<Diagnostic> findings) {

        static Reading of(JsonNode one) {
            var findings = new ArrayList<Diagnostic>();
            var bytes = one.get("yaml").asText().getBytes(StandardCharsets.UTF_8);
            return new Reading(YamlTree.any("case.yaml", bytes, findings), findings);
        }
    }

    private static List<JsonNode> cases() throws IOException {
        var all = new ArrayList<JsonNode>();
        JSON.readTree(Files.readString(CASES)).forEach(all::add);
        return all;
    }

    private static String id(JsonNode one) {
        return one.get("id").asText();
    }

    private static boolean isFault(JsonNode one) {
        return one.path("fail").asBoolean();
    }

    @Test
    @DisplayName("the suite is whole: 402 cases, of which 94 are no YAML")
    void whole() throws IOException {
        assertThat(cases()).hasSize(402).filteredOn(YamlSuiteTest::isFault).hasSize(94);
        assertThat(cases()).extracting(YamlSuiteTest::id).doesNotHaveDuplicates();
    }

    @Test
    @DisplayName(
            "what the suite calls no YAML is refused at a place of the text; what is read in spite of it is listed")
    void faults() throws IOException {
        var read = new ArrayList<String>();
        for (var one : cases()) {
            if (isFault(one)) {
                var reading = Reading.of(one);
                if (reading.findings().isEmpty()) {
                    read.add(id(one));
                }
                standWithin(one, reading.findings());
            }
        }
        assertThat(read).containsExactlyElementsOf(READ_ALL_THE_SAME);
    }

    @Test
    @DisplayName("every other case is read as the suite says, or refused for a reason that records have")
    void meanings() throws IOException {
        var reasons = new TreeMap<String, Integer>();
        var others = new ArrayList<String>();
        int read = 0;
        for (var one : cases()) {
            if (isFault(one)) {
                continue;
            }
            var reading = Reading.of(one);
            if (!reading.findings().isEmpty()) {
                standWithin(one, reading.findings());
                reasons.merge(reading.findings().get(0).code(), 1, Integer::sum);
            } else if (agrees(one, reading.root())) {
                read++;
            } else {
                others.add(id(one));
            }
        }
        assertThat(others).containsExactlyElementsOf(READ_OTHERWISE);
        assertThat(reasons).isEqualTo(REFUSED);
        assertThat(read).isEqualTo(READ);
    }

    private static void standWithin(JsonNode one, List<Diagnostic> findings) {
        var lines = one.get("yaml").asText().split("\r\n|[\n\r]", -1);
        assertThat(findings).allSatisfy(f -> {
            assertThat(f.stops()).isTrue();
            assertThat(f.span().line()).as(id(one)).isLessThanOrEqualTo(lines.length + 1);
            var line = f.span().line() <= lines.length ? lines[f.span().line() - 1] : "";
            assertThat(f.span().column()).as(id(one)).isLessThanOrEqualTo(line.codePointCount(0, line.length()) + 1);
        });
    }

    private static boolean agrees(JsonNode one, Optional<Node> read) throws IOException {
        if (!one.has("json")) {
            // such a case has its meaning as lines of events only
            return events(one.get("tree").asText())
                    .equals(read.map(YamlSuiteTest::events).orElse(""));
        }
        var documents = documents(one.get("json").asText());
        return documents.isEmpty()
                ? read.isEmpty() || isNothing(read.get())
                : documents.size() == 1 && read.isPresent() && agrees(documents.get(0), read.get());
    }

    private static boolean isNothing(Node node) {
        return node instanceof Node.Scalar s && s.isEmpty();
    }

    private static List<JsonNode> documents(String json) throws IOException {
        var all = new ArrayList<JsonNode>();
        try (var parser = JSON.createParser(json)) {
            while (parser.nextToken() != null) {
                all.add(JSON.readTree(parser));
            }
        }
        return all;
    }

    private static boolean agrees(JsonNode json, Node node) {
        if (node instanceof Node.Mapping mapping) {
            return json.isObject()
                    && json.size() == mapping.entries().size()
                    && mapping.entries().stream()
                            .allMatch(e -> json.has(e.key().text())
                                    && agrees(json.get(e.key().text()), e.value()));
        }
        if (node instanceof Node.Sequence sequence) {
            boolean same = json.isArray() && json.size() == sequence.items().size();
            for (int i = 0; same && i < json.size(); i++) {
                same = agrees(json.get(i), sequence.items().get(i));
            }
            return same;
        }
        return json.isValueNode() && agrees(json, (Node.Scalar) node);
    }

    /** A scalar is read as its text, for a field has its type already; it agrees where the schema makes the same of the text. */
    private static boolean agrees(JsonNode json, Node.Scalar scalar) {
        if (json.isNull()) {
            return scalar.isEmpty();
        }
        return json.isNumber()
                ? NUMBER.matcher(scalar.text()).matches()
                        && new BigDecimal(scalar.text()).compareTo(json.decimalValue()) == 0
                : scalar.text().equals(json.asText());
    }

    private static String events(String tree) {
        var out = new StringBuilder();
        tree.lines()
                .map(String::strip)
                .filter(l -> !l.matches("[+-](STR|DOC).*"))
                .map(l -> l.replaceFirst("^(\\+(?:MAP|SEQ)).*", "$1").replaceFirst("^=VAL .", "="))
                .forEach(l -> out.append(l).append('\n'));
        return out.toString();
    }

    private static String events(Node node) {
        var out = new StringBuilder();
        write(node, out);
        return out.toString();
    }

    private static void write(Node node, StringBuilder out) {
        if (node instanceof Node.Mapping mapping) {
            out.append("+MAP\n");
            mapping.entries().forEach(e -> {
                write(e.key(), out);
                write(e.value(), out);
            });
            out.append("-MAP\n");
        } else if (node instanceof Node.Sequence sequence) {
            out.append("+SEQ\n");
            sequence.items().forEach(i -> write(i, out));
            out.append("-SEQ\n");
        } else {
            var text = ((Node.Scalar) node).text();
            out.append('=')
                    .append(text.replace("\\", "\\\\").replace("\n", "\\n").replace("\t", "\\t"))
                    .append('\n');
        }
    }
}
