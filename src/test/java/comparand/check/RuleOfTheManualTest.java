package comparand.check;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.manual.CompiledBlock;
import comparand.read.LibraryReader;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.lang.invoke.MethodHandles;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rule that the manual writes step by step does what the manual says of it. */
class RuleOfTheManualTest {

    @TempDir
    Path folder;

    @Test
    @DisplayName("it finds a place without a page, and passes one with it")
    void rule() throws Exception {
        var block = CompiledBlock.inChapter("add-a-rule.md", "comparand/check/PlaceWithoutPage.java", folder);
        var type = MethodHandles.lookup().defineClass(block.bytes());
        var constructor = type.getDeclaredConstructor();
        constructor.setAccessible(true);
        var rule = (Rule) constructor.newInstance();

        var library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        assertThat(found(rule, library)).isEmpty();
        LibraryCopy.edit(
                library.resolve("sources/example-paper.yaml"), "{page: 6, table: 2, row: 4}", "{table: 2, row: 4}");
        assertThat(found(rule, library))
                .containsExactly("NOTE sources/example-paper.yaml:16:9 the place of `X1` names no page");
    }

    private static List<String> found(Rule rule, Path root) throws IOException {
        var findings = new Findings(rule);
        LibraryReader.read(root)
                .fold(
                        (library, notes) -> {
                            rule.check(new Context(library, List.of(), LocalDate.of(2026, 11, 20)), findings);
                            return true;
                        },
                        stops -> {
                            throw new AssertionError(stops);
                        });
        return Findings.together(List.of(findings)).all().stream()
                .map(f -> f.severity() + " " + f.span() + " " + f.message())
                .toList();
    }
}
