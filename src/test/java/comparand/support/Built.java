package comparand.support;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import comparand.app.CommandLineUse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** A dossier built through the command line, once per test run, and read back from what was written. */
public final class Built {

    private static final Map<Path, Built> BUILT = new ConcurrentHashMap<>();
    private static final Map<Path, Built> GERMAN = new ConcurrentHashMap<>();

    private final Path folder;
    private final JsonNode results;

    private Built(Path dossier, String... more) {
        try {
            var out = Files.createTempDirectory("comparand-test");
            var run = CommandLineUse.run(
                    Stream.concat(Stream.of("build", dossier.toString(), "--out", out.toString()), Stream.of(more))
                            .toArray(String[]::new));
            if (run.code() != 0) {
                throw new IllegalStateException(run.err());
            }
            var name = String.valueOf(dossier.getFileName()).replace(".yaml", "");
            folder = out.resolve(name);
            results = new ObjectMapper().readTree(folder.resolve("results.json").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Built of(String dossier) {
        return BUILT.computeIfAbsent(Path.of(dossier), Built::new);
    }

    /** The same in German. */
    public static Built german(String dossier) {
        return GERMAN.computeIfAbsent(Path.of(dossier), d -> new Built(d, "--language", "de"));
    }

    /** The demo of the project. */
    public static Built demo() {
        return of("evidence/dossiers/small-oxygenators.yaml");
    }

    public Path folder() {
        return folder;
    }

    public JsonNode results() {
        return results;
    }

    /** Whether a number is the year of a date of the results, of which references print no more. */
    public boolean hasYear(String number) {
        return number.matches("20\\d\\d") && results.toString().contains(number + "-");
    }

    /** The pair of two values by their ids; a local id may be given from its metric on. */
    public JsonNode pair(String ours, String theirs) {
        return all(results.get("pairs")).stream()
                .filter(p -> p.get("ours").asText().endsWith(ours)
                        && p.get("theirs").asText().endsWith(theirs))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no pair " + ours + " | " + theirs));
    }

    public JsonNode comparand(String id) {
        return all(results.get("comparands")).stream()
                .filter(c -> c.get("id").asText().endsWith(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no comparand " + id));
    }

    public static List<JsonNode> all(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false).toList();
    }

    /** The text of the evidence table, blanks and line ends folded. */
    public String pdf() {
        return ReadBack.pdf(folder.resolve("evidence-table.pdf"));
    }

    /** The cells of the workbook as printed, row by row, sheet by sheet. */
    public List<List<String>> workbook() {
        return ReadBack.workbook(folder.resolve("evidence-workbook.xlsx"));
    }
}
