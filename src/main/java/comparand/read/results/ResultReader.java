package comparand.read.results;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.document.result.ResultSet;
import comparand.flow.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Reads the results of an earlier run: a file {@code results.json}, or the folder of outputs it lies in. */
public final class ResultReader {

    private static final String NAME = "results.json";

    /** A run over 20 000 values writes about 60 MB. */
    private static final int LARGEST = 200_000_000;

    private static final String AGAIN = "build the dossier again, and give the folder of its outputs";

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .addModule(new Jdk8Module())
            .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();

    private ResultReader() {}

    /** The results, or the finding that there are none to be read. */
    public static Outcome<ResultSet> read(Path path) {
        var file = Files.isDirectory(path) ? path.resolve(NAME) : path;
        if (!Files.isRegularFile(file)) {
            return stop(
                    "results-missing",
                    Span.startOf(path.toString()),
                    Files.isDirectory(path)
                            ? "there is no `%s` in this folder".formatted(NAME)
                            : "`%s` is no file".formatted(path),
                    "what changed is read from the results of both runs",
                    "give a file `%s`, or the folder of outputs it lies in".formatted(NAME));
        }
        try {
            if (Files.size(file) > LARGEST) {
                return stop(
                        "results-too-large",
                        Span.startOf(file.toString()),
                        "this file has more than the %d bytes that results of a run have".formatted(LARGEST),
                        "it would be read for minutes, and is something else",
                        AGAIN);
            }
            return of(MAPPER.readTree(Files.readAllBytes(file)), file);
        } catch (JsonMappingException e) {
            return stop(
                    "results-incomplete",
                    Span.startOf(file.toString()),
                    "these results are not as a run writes them: one breaks a rule",
                    "what cannot be would look as if it had changed",
                    AGAIN);
        } catch (JsonProcessingException e) {
            var at = Optional.ofNullable(e.getLocation())
                    .map(l -> new Span(file.toString(), Math.max(1, l.getLineNr()), Math.max(1, l.getColumnNr()), 1))
                    .orElseGet(() -> Span.startOf(file.toString()));
            return stop(
                    "results-unreadable",
                    at,
                    "this is not JSON from here on",
                    "a file that was cut off or edited by hand is not what a run wrote",
                    AGAIN);
        } catch (IOException e) {
            return stop(
                    "results-unreadable",
                    Span.startOf(file.toString()),
                    "this file could not be read",
                    "what changed is read from the results of both runs",
                    "check that it is whole, and may be read");
        }
    }

    private static Outcome<ResultSet> of(JsonNode json, Path file) throws JsonProcessingException {
        var at = Span.startOf(file.toString());
        var format = json.path("format").asText();
        if (!format.startsWith(ResultSet.FORMATS)) {
            return stop(
                    "results-other",
                    at,
                    "this file does not say that it holds results of a run",
                    "its first key is `format: %s` in every version".formatted(ResultSet.FORMAT),
                    "give a file `%s` that `comparand build` wrote".formatted(NAME));
        }
        if (!format.equals(ResultSet.FORMAT)) {
            return stop(
                    "results-version",
                    at,
                    "these results are of the format `%s`, and this tool reads `%s`"
                            .formatted(shortened(format), ResultSet.FORMAT),
                    "in another version of the format a field may mean something else",
                    "build both runs anew with one version of the tool");
        }
        var fault = ResultShape.fault(json, ResultSet.class, "");
        return fault.isPresent()
                ? stop(
                        "results-incomplete",
                        at,
                        "these results are not as a run writes them: " + fault.get(),
                        "what is missing would look as if it had changed",
                        AGAIN)
                : Outcome.of(MAPPER.treeToValue(json, ResultSet.class));
    }

    private static String shortened(String text) {
        return text.length() > 60 ? text.substring(0, 57) + "..." : text;
    }

    private static Outcome<ResultSet> stop(String code, Span at, String message, String why, String fix) {
        return Outcome.stopped(List.of(Diagnostic.stop(code, at, message, why, fix)));
    }
}
