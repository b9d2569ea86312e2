package comparand.intake;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import comparand.model.Library;
import comparand.read.LibraryReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Whatever a source record can hold, the form and the questions ask for: held against the published schema of the record. */
final class EveryKeyAskedTest {

    private static final Path SCHEMA = Path.of("templates/schema/source.schema.json");

    /** Keys of a source that have no slot, and why. */
    private static final Map<String, String> NOT_ASKED_OF_SOURCE = notAskedOfSource();

    private static Map<String, String> notAskedOfSource() {
        var why = new TreeMap<String, String>();
        why.put("values", "each has a row of its own");
        for (var key : List.of(
                "editor/*",
                "container-title-short",
                "collection-title",
                "number",
                "edition",
                "publisher-place",
                "ISSN",
                "ISBN",
                "PMCID",
                "URL",
                "kept/*")) {
            why.put("reference/" + key, "comes in with a file of references, and stays as it came");
        }
        return why;
    }

    /** The same of a value. */
    private static final Map<String, String> NOT_ASKED_OF_VALUE = Map.of();

    private final JsonNode schema;

    EveryKeyAskedTest() throws IOException {
        schema = new ObjectMapper().readTree(SCHEMA.toFile());
    }

    private static Library demo() {
        return LibraryReader.read(Path.of("evidence")).fold((l, said) -> l, said -> {
            throw new AssertionError(String.valueOf(said));
        });
    }

    @Test
    void everyKeyOfASourceHasAPiece() {
        var keys = paths("SourceRecord");

        assertThat(keys).hasSizeGreaterThan(30).contains("cohort/centres", "status/state");
        agree(keys, new SourcePieces(Scope.all(demo())).all(), NOT_ASKED_OF_SOURCE);
    }

    @Test
    void everyKeyOfAValueHasAPiece() {
        var keys = paths("ValueRecord");

        assertThat(keys)
                .hasSizeGreaterThan(50)
                .contains("letter/may-be-cited", "read-from-figure/error-bar", "read-from-figure/picture/sha256");
        var pieces = new ValuePieces(Scope.all(demo()), new Reader("AB", "2026-09-14"), ValuePieces.KnownSource.none())
                .all();
        agree(keys, pieces, NOT_ASKED_OF_VALUE);
    }

    /** Every key is asked for or excepted, no exception is asked for, and no piece writes what no record can hold. */
    private static void agree(Set<String> keys, List<Piece> pieces, Map<String, String> excepted) {
        var known = pieces.stream().flatMap(p -> p.paths().stream()).collect(Collectors.toCollection(TreeSet::new));

        assertThat(keys.stream().filter(k -> !isUnder(k, known) && !isExcepted(k, excepted.keySet())))
                .as("keys of the schema without a piece")
                .isEmpty();
        assertThat(excepted.keySet())
                .allMatch(e -> keys.stream().anyMatch(k -> isExcepted(k, Set.of(e))))
                .noneMatch(e -> known.contains(e.replace("/*", "")));
        assertThat(known.stream()
                        .filter(k ->
                                keys.stream().noneMatch(s -> s.equals(k) || s.startsWith(k + "/") || isOpen(k, s))))
                .as("pieces without a key of the schema")
                .isEmpty();
    }

    private static boolean isExcepted(String key, Set<String> excepted) {
        return excepted.stream()
                .anyMatch(e -> e.equals(key) || (e.endsWith("/*") && key.startsWith(e.substring(0, e.length() - 1))));
    }

    /** A piece may hold a whole list of records, as ticks and readers; keys the library declares stand under conditions. */
    private static boolean isUnder(String key, Set<String> known) {
        return known.stream().anyMatch(k -> k.equals(key) || key.startsWith(k + "/") || isOpen(k, key));
    }

    private static boolean isOpen(String known, String key) {
        return key.endsWith("/*") && known.startsWith(key.substring(0, key.length() - 1));
    }

    private Set<String> paths(String type) {
        var found = new TreeSet<String>();
        walk(schema.at("/$defs/" + type), "", found);
        return found;
    }

    /** The paths of a record to everything that is written as one text or one list of texts. */
    private void walk(JsonNode record, String above, Set<String> found) {
        record.get("properties").properties().forEach(p -> {
            var path = above + p.getKey();
            var of = p.getValue().has("items") ? p.getValue().get("items") : p.getValue();
            if (path.equals("values")) {
                found.add(path);
            } else if (of.has("$ref")) {
                walk(schema.at(of.get("$ref").asText().substring(1)), path + "/", found);
            } else if (of.has("additionalProperties")) {
                found.add(path + "/*");
            } else {
                found.add(path);
            }
        });
    }
}
