package comparand.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.diag.Diagnostic;
import comparand.read.LibraryReader;
import comparand.support.LibraryCopy;
import comparand.support.Specs;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs the specifications in {@code spec/rules}: each edits the blank library, which has no findings, and says what the
 * rule then finds, and where, or that it finds nothing.
 */
class RuleSpecTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 20);

    @TempDir
    Path folder;

    @Test
    void theBlankLibraryHasNoFindings() throws IOException {
        assertThat(findings(LibraryCopy.of(Path.of("templates/blank"), folder.resolve("blank"))))
                .isEmpty();
    }

    @Test
    void everyRuleHasASpecificationAndEverySpecificationARule() {
        var codes = Rules.ALL.stream().map(Rule::code).toList();
        var specs = Specs.of("rules").stream().map(s -> s.get("rule").asText()).toList();

        assertThat(codes).doesNotHaveDuplicates().hasSizeGreaterThanOrEqualTo(25);
        assertThat(specs).containsExactlyInAnyOrderElementsOf(codes);
    }

    @TestFactory
    Stream<DynamicNode> everyRuleFindsWhatItsSpecificationSaysAndNoMore() {
        return Specs.of("rules").stream().map(spec -> {
            var code = spec.get("rule").asText();
            var cases = new ArrayList<DynamicNode>();
            assertThat(spec.get("finds")).as(code + " has a case it finds").isNotEmpty();
            assertThat(spec.get("passes")).as(code + " has a case it passes").isNotEmpty();
            spec.get("finds").forEach(c -> cases.add(dynamicTest(c.get("id").asText(), () -> finds(code, c))));
            spec.get("passes").forEach(c -> cases.add(dynamicTest(c.get("id").asText(), () -> passes(code, c))));
            return dynamicContainer(code + ": " + spec.get("law").asText(), cases);
        });
    }

    private void finds(String code, JsonNode c) throws IOException {
        var found = edited(c).stream().filter(f -> f.code().equals(code)).toList();

        assertThat(found).as("findings of " + code).hasSize(c.path("times").asInt(1));
        var first = found.get(0);
        assertThat(first.severity().name()).isEqualTo(c.get("severity").asText());
        assertThat(first.span().toString()).isEqualTo(c.get("at").asText());
        assertThat(first.message()).contains(c.get("says").asText());
        if (c.has("ends")) {
            assertThat(first.message()).endsWith(c.get("ends").asText());
        }
        if (c.has("fix")) {
            assertThat(first.fix()).contains(c.get("fix").asText());
        }
    }

    /** The library was read: a library that stops the reader would pass every rule. */
    private void passes(String code, JsonNode c) throws IOException {
        var rules = Rules.ALL.stream().map(Rule::code).toList();

        assertThat(edited(c))
                .allMatch(f -> rules.contains(f.code()))
                .noneMatch(f -> f.code().equals(code));
    }

    private List<Diagnostic> edited(JsonNode c) throws IOException {
        return findings(Specs.edited(
                Path.of("templates/blank"),
                c.path("edits"),
                folder.resolve(c.get("id").asText())));
    }

    private static List<Diagnostic> findings(Path library) {
        return LibraryReader.read(library).then(l -> Checker.check(l, TODAY)).findings();
    }
}
