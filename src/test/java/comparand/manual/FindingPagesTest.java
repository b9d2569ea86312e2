package comparand.manual;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** No finding without a page, and no page without a finding: the source is the judge. */
class FindingPagesTest {

    /** It takes two programs at once, or one that was stopped while it wrote. */
    private static final Set<String> OF_OTHER_PROGRAMS = Set.of(
            "library-busy",
            "library-settled",
            "library-unsettled",
            "output-busy",
            "output-settled",
            "output-over-library");

    private static final Set<String> OF_HUGE_FILES = Set.of(
            "yaml-too-many", "findings-too-many", "inputs-too-many", "references-line-too-long", "results-too-large");

    @Test
    @DisplayName("the findings of the manual are those the source can give")
    void codes() throws IOException {
        var source = CodesInSource.read();

        assertThat(source.notUnderstood())
                .as("what is given as the name of a finding")
                .isEmpty();
        assertThat(source.codes()).hasSizeGreaterThan(150);
        assertThat(Findings.all().keySet()).containsExactlyInAnyOrderElementsOf(source.codes());
    }

    @Test
    @DisplayName("every file of findings is read")
    void files() throws IOException {
        try (var files = Files.list(Path.of("src/main/resources/comparand/manual/findings"))) {
            assertThat(files.map(f -> f.getFileName().toString())).containsExactlyInAnyOrderElementsOf(Findings.FILES);
        }
    }

    @Test
    @DisplayName("only what no file of a user can bring about by itself goes without an example")
    void examples() {
        assertThat(Findings.all().values().stream()
                        .filter(f -> f.examples().isEmpty())
                        .map(Finding::code))
                .allMatch(c -> c.startsWith("slide-") || OF_OTHER_PROGRAMS.contains(c) || OF_HUGE_FILES.contains(c));
    }

    @Test
    @DisplayName("a page says what is checked in a clause, without a word of programming")
    void words() {
        assertThat(Findings.all().values()).allSatisfy(f -> {
            assertThat(f.checks()).as(f.code()).doesNotEndWith(".");
            assertThat(f.checks() + f.why() + f.instead())
                    .as(f.code())
                    .doesNotContainPattern("\\b([Nn]ull|[Ee]xception|boolean|array|parse[rd]?|stack)\\b")
                    .doesNotContain("{@");
        });
    }
}
