package comparand.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import comparand.write.html.PageScripts;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every case of {@code spec/page}: what the functions of the page's scripts give, run where a reader runs them. */
class ScriptCasesBrowserIT {

    private static final Path CASES = Path.of("src/test/resources/spec/page");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Browser BROWSER = Browser.start();

    @TempDir
    static Path folder;

    @AfterAll
    static void close() {
        BROWSER.close();
    }

    @TestFactory
    List<DynamicTest> everyFunctionGivesWhatItsCasesSay() throws IOException {
        BROWSER.open(emptyPageWithTheScripts());
        assertThat(BROWSER.complaints()).isEmpty();
        var tests = new ArrayList<DynamicTest>();
        for (var file : files()) {
            for (var group : groups(JSON.readTree(file.toFile()))) {
                var name = group.get("module").asText() + "."
                        + group.get("function").asText();
                var cases = group.get("cases");
                assertThat(cases).as("cases of %s in %s", name, file).isNotEmpty();
                IntStream.range(0, cases.size())
                        .mapToObj(i -> DynamicTest.dynamicTest(
                                file.getFileName() + " " + name + " " + (i + 1), () -> check(name, cases.get(i))))
                        .forEach(tests::add);
            }
        }
        assertThat(tests).isNotEmpty();
        return tests;
    }

    /** A file is one group of cases, or a list of them. */
    private static Iterable<JsonNode> groups(JsonNode file) {
        return file.isArray() ? file : List.of(file);
    }

    private static void check(String function, JsonNode given) {
        var call = "return JSON.stringify(" + function + "(...JSON.parse(arguments[0])), (k, v) =>"
                + " v === undefined ? null : typeof v === 'number' && !Number.isFinite(v) ? String(v) : v)";
        var gives = BROWSER.run(call, given.get("given").toString())
                .map(Object::toString)
                .orElse("null");
        try {
            SameData.check(function + given.get("given"), JSON.readTree(gives), given.get("gives"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path emptyPageWithTheScripts() throws IOException {
        return Files.writeString(
                folder.resolve("scripts.html"),
                "<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><title>Scripts</title><script>"
                        + PageScripts.withoutTheStart() + "</script></html>");
    }

    private static List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(CASES)) {
            var found =
                    files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
            assertThat(found).as("files of cases in %s", CASES).isNotEmpty();
            return found;
        }
    }
}
