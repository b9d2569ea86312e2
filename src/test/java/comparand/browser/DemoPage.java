package comparand.browser;

import static java.util.Objects.requireNonNull;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import comparand.app.CommandLineUse;
import comparand.support.Built;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The page of the demo, built through the command line once for all tests in a browser, with the results it was written from. */
final class DemoPage {

    private static final String DOSSIER = "evidence/dossiers/small-oxygenators.yaml";
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Pattern DATA =
            Pattern.compile("<script type=\"application/json\" id=\"exploration\">(.*?)</script>", Pattern.DOTALL);

    private static @Nullable Path folder;

    private DemoPage() {}

    /** The page. */
    static Path file() {
        return folder().resolve("page.html");
    }

    static JsonNode results() {
        return read(folder().resolve("results.json"));
    }

    /** What the page gives its scripts. */
    static JsonNode exploration() {
        try {
            var data = DATA.matcher(Files.readString(file()));
            if (!data.find()) {
                throw new AssertionError("the page holds no data for its scripts");
            }
            return JSON.readTree(data.group(1));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The question of a metric, as given to the scripts. */
    static JsonNode question(String metric) {
        return Built.all(exploration().get("questions")).stream()
                .filter(q -> q.get("metric").asText().equals(metric))
                .findFirst()
                .orElseThrow();
    }

    /** The pairs of a question, as given to the scripts. */
    static List<JsonNode> pairs(String metric) {
        return Built.all(question(metric).get("pairs"));
    }

    /** The pairs of a metric, as in the results. */
    static List<JsonNode> resultPairs(String metric) {
        return Built.all(results().get("pairs")).stream()
                .filter(p -> p.get("metric").asText().equals(metric))
                .toList();
    }

    /** How many pairs the results hold. */
    static int resultsPairs() {
        return results().get("pairs").size();
    }

    /** A text of the page by its key, its places left open. */
    static String word(String key) {
        return requireNonNull(exploration().get("words").get(key), key).asText();
    }

    /** The results of another run of the demo. */
    static Path resultsOf(String... more) throws IOException {
        return build(more).resolve("results.json");
    }

    private static synchronized Path folder() {
        if (folder == null) {
            try {
                folder = build();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return folder;
    }

    private static Path build(String... more) throws IOException {
        var out = Files.createTempDirectory("comparand-page");
        var run = CommandLineUse.run(
                Stream.concat(Stream.of("build", DOSSIER, "--for", "page", "--out", out.toString()), Stream.of(more))
                        .toArray(String[]::new));
        if (run.code() != 0) {
            throw new IllegalStateException(run.err());
        }
        return out.resolve("small-oxygenators");
    }

    static JsonNode read(Path json) {
        try {
            return JSON.readTree(json.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
