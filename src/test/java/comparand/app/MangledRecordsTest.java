package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import comparand.support.FolderContent;
import comparand.support.LibraryCopy;
import comparand.support.Mangling;
import comparand.support.PrintedFinding;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Damages the blank library in every way the specifications in {@code spec/mangled} list, over an output that stands
 * already, and builds again.
 */
class MangledRecordsTest {

    private static final Path SPECS = Path.of("src/test/resources/spec/mangled");
    private static final Path BLANK = Path.of("templates/blank");

    /** Longer lines bury what they say. */
    private static final int LONGEST_LINE = 1200;

    @TempDir
    static Path earlier;

    @TempDir
    Path folder;

    /** One case on its way: the damaged library and the folder with the outputs of the whole one. */
    private record Damaged(Path library, Path out, FolderContent before) {

        CommandLineUse.Run build() {
            return CommandLineUse.run(
                    "build",
                    library.resolve("dossiers/example.yaml").toString(),
                    "--for",
                    "evidence",
                    "--out",
                    out.toString());
        }
    }

    @BeforeAll
    static void anOutputStands() {
        var run = CommandLineUse.run(
                "build", BLANK.resolve("dossiers/example.yaml").toString(), "--for", "evidence", "--out", "" + earlier);
        assertThat(run.code()).as(run.err()).isZero();
    }

    @Test
    void theSpecificationsHoldEnoughCasesAndNoneTwice() {
        var cases = specs().stream()
                .flatMap(s -> Stream.concat(all(s.get("stops")), all(s.get("survives"))))
                .map(c -> c.get("edits").toString())
                .toList();

        assertThat(cases).hasSizeGreaterThanOrEqualTo(60).doesNotHaveDuplicates();
    }

    @TestFactory
    Stream<DynamicNode> damageStopsTheBuildIsNamedAndLeavesTheEarlierOutputAlone() {
        return nodes("stops", this::stops);
    }

    @TestFactory
    Stream<DynamicNode> damageThatHarmsNothingOrOneValueIsNamedAndTheOutputWritten() {
        return nodes("survives", this::survives);
    }

    private void stops(JsonNode c) throws IOException {
        var damaged = damaged(c);
        var library = FolderContent.of(damaged.library);

        var run = damaged.build();

        assertThat(run.code())
                .as("exit code of %s: %s", c.get("case"), cut(run.err()))
                .isEqualTo(Exit.STOPPED);
        assertThat(run.out()).as("standard output").isEmpty();
        saysWhatIsWrong(c, run, damaged.library);
        assertThat(run.err()).contains("Nothing was written.");
        assertThat(FolderContent.of(damaged.out)).as("the outputs").isEqualTo(damaged.before);
        assertThat(FolderContent.of(damaged.library)).as("the library").isEqualTo(library);
    }

    private void survives(JsonNode c) throws IOException {
        var damaged = damaged(c);
        var library = FolderContent.of(damaged.library);

        var run = damaged.build();

        assertThat(run.code())
                .as("exit code of %s: %s", c.get("case"), cut(run.err()))
                .isZero();
        saysWhatIsWrong(c, run, damaged.library);
        assertThat(FolderContent.of(damaged.out).entries().keySet())
                .isEqualTo(damaged.before.entries().keySet());
        assertThat(FolderContent.of(damaged.library)).as("the library").isEqualTo(library);
    }

    private Damaged damaged(JsonNode c) throws IOException {
        var place = Files.createTempDirectory(folder, "case");
        var out = LibraryCopy.of(earlier, place.resolve("out"));
        var library = LibraryCopy.of(BLANK, place.resolve("library"));
        Mangling.apply(c.get("edits"), library);
        return new Damaged(library, out, FolderContent.of(out));
    }

    private static void saysWhatIsWrong(JsonNode c, CommandLineUse.Run run, Path library) {
        var printed = run.out() + run.err();
        assertThat(printed).doesNotContain("\tat ", "Exception", "java.");
        assertThat(printed.lines())
                .as(c.get("case") + ": no line buries what it says")
                .allMatch(l -> l.length() <= LONGEST_LINE);
        assertThat(printed.codePoints().filter(MangledRecordsTest::steersTheTerminal))
                .as(c.get("case") + ": signs that steer a terminal")
                .isEmpty();
        var found = PrintedFinding.in(run.err());
        assertThat(found)
                .as("the findings of %s: %s", c.get("case"), cut(run.err()))
                .hasSize(c.get("finds").size());
        for (int i = 0; i < found.size(); i++) {
            matches(c.get("case").asText(), found.get(i), c.get("finds").get(i));
        }
        found.forEach(f -> pointsIntoTheLibrary(f, library));
    }

    private static void matches(String name, PrintedFinding found, JsonNode expected) {
        assertThat(found.severity())
                .as(name)
                .isEqualTo(expected.path("severity").asText("STOP"));
        if (expected.has("code")) {
            assertThat(found.code()).as(name).isEqualTo(expected.get("code").asText());
        }
        if (expected.has("at")) {
            var at = expected.get("at").asText();
            var toTheColumn = at.matches(".*:\\d+:\\d+");
            assertThat(toTheColumn ? found.place() : found.file() + ":" + found.line())
                    .as(name)
                    .isEqualTo(at);
        }
        assertThat(found.message()).as(name).contains(expected.path("says").asText(""));
        assertThat(found.fix()).as(name).contains(expected.path("fix").asText(""));
        assertThat(found.fix())
                .as(name + ": what to do next")
                .doesNotEndWith(": ")
                .isNotBlank();
    }

    /** The file is one of the library, or one that has gone from it; the place is one an editor can go to. */
    private static void pointsIntoTheLibrary(PrintedFinding finding, Path library) {
        var file = library.resolve(finding.file());
        assertThat(file.normalize()).startsWithRaw(library);
        assertThat(Files.exists(file, LinkOption.NOFOLLOW_LINKS))
                .as(file + " is there")
                .isTrue();
        var lines = linesOf(file);
        if (!lines.isEmpty()) {
            assertThat(finding.line()).as("line of " + finding.place()).isLessThanOrEqualTo(lines.size() + 1);
            var line = finding.line() <= lines.size() ? lines.get(finding.line() - 1) : "";
            assertThat(finding.column())
                    .as("column of " + finding.place())
                    .isLessThanOrEqualTo(line.codePointCount(0, line.length()) + 1);
        }
    }

    /** The lines of a file; none if it is no text an editor could show. */
    private static List<String> linesOf(Path file) {
        try {
            return Files.isRegularFile(file) ? Files.readAllLines(file) : List.of();
        } catch (IOException notText) {
            return List.of();
        }
    }

    private static boolean steersTheTerminal(int sign) {
        return Character.isISOControl(sign) && sign != '\n' && sign != '\r';
    }

    private static String cut(String text) {
        return text.length() <= 3000 ? text : text.substring(0, 3000) + "…";
    }

    private interface Check {
        void of(JsonNode c) throws IOException;
    }

    private static Stream<DynamicNode> nodes(String list, Check check) {
        return specs().stream().map(spec -> {
            var tests = new ArrayList<DynamicNode>();
            all(spec.get(list)).forEach(c -> tests.add(dynamicTest(c.get("case").asText(), () -> check.of(c))));
            return dynamicContainer(spec.get("area").asText(), tests);
        });
    }

    private static Stream<JsonNode> all(JsonNode list) {
        var found = new ArrayList<JsonNode>();
        list.forEach(found::add);
        return found.stream();
    }

    private static List<JsonNode> specs() {
        var mapper = new YAMLMapper();
        var found = new ArrayList<JsonNode>();
        try (var files = Files.list(SPECS)) {
            for (var file : files.sorted().toList()) {
                found.add(mapper.readTree(Files.readString(file)));
            }
            return found;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
