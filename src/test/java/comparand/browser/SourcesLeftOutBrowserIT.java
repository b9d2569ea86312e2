package comparand.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import comparand.app.CommandLineUse;
import comparand.support.Built;
import comparand.support.LibraryCopy;
import comparand.support.Specs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What five sources say together when some are left out on the page is what the tool says when the dossier leaves them out.
 * The library is that of {@code spec/pairs/together.yaml}.
 */
class SourcesLeftOutBrowserIT {

    private static final ObjectMapper JSON = new ObjectMapper();

    private static final String POOLS = """
            const data = JSON.parse(document.getElementById('exploration').textContent);
            const judged = Judging.judgeOf(data)({...Judging.REPORT, left: JSON.parse(arguments[0])});
            return JSON.stringify(judged.questions.flatMap(q => q.pools));
            """;

    private static final Browser BROWSER = Browser.start();

    @TempDir
    static Path folder;

    private static Path library = Path.of("");

    @BeforeAll
    static void open() throws IOException {
        var five = Specs.of("pairs").stream()
                .flatMap(s -> Built.all(s.get("cases")).stream())
                .filter(c -> c.get("id").asText().equals("together-4"))
                .findFirst()
                .orElseThrow();
        library = Specs.edited(Path.of("templates/blank"), five.get("edits"), folder.resolve("library"));
        BROWSER.open(build(library).resolve("page.html"));
    }

    @AfterAll
    static void close() {
        BROWSER.close();
    }

    @ParameterizedTest(name = "without {0}")
    @ValueSource(
            strings = {
                "paper-2",
                "paper-3",
                "paper-4",
                "paper-5",
                "example-paper",
                "paper-2 paper-3",
                "paper-4 example-paper",
                "paper-2 paper-3 paper-5"
            })
    @DisplayName("the sentences are those of a report without them, but for the numbers of sources")
    void leftOut(String names) throws IOException {
        var left = List.of(names.split(" "));
        var copy = LibraryCopy.of(library, folder.resolve("without " + names));
        Files.writeString(
                copy.resolve("dossiers/example.yaml"),
                "leave-out:\n"
                        + left.stream()
                                .map(s -> "  - {what: " + s + ", reason: tried}\n")
                                .collect(Collectors.joining()),
                StandardOpenOption.APPEND);

        var report = JSON.readTree(build(copy).resolve("results.json").toFile()).get("together");
        var page = JSON.readTree(
                BROWSER.run(POOLS, JSON.writeValueAsString(left)).orElseThrow().toString());

        assertThat(report).hasSize(1);
        assertThat(page).hasSize(1);
        assertThat(page.get(0).get("kept")).hasSize(5 - left.size());
        assertThat(sentences(page.get(0).get("sentences")))
                .isEqualTo(sentences(report.get(0).get("sentences")));
    }

    private static List<String> sentences(JsonNode sentences) {
        return Built.all(sentences).stream()
                .map(s -> s.asText().replaceAll("\\d+(?=:)", "n"))
                .toList();
    }

    private static Path build(Path library) throws IOException {
        var out = Files.createTempDirectory(folder, "out");
        var run = CommandLineUse.run(
                "build", library.resolve("dossiers/example.yaml").toString(), "--for", "page", "--out", out.toString());
        assertThat(run.code()).as(run.err()).isZero();
        return out.resolve("example");
    }
}
