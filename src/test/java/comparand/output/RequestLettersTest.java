package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.app.CommandLineUse;
import comparand.support.Built;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Letters for what was not reported: every missing fact once, to its owner alone. */
class RequestLettersTest {

    @TempDir
    Path temporary;

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("every value with a missing fact is in exactly one letter, which asks about its source")
    void onceAndToItsOwner(Built built) {
        var asked = new ArrayList<String>();
        for (var letter : requests(built)) {
            for (var item : Built.all(letter.get("items"))) {
                if (!item.get("metric").asText().isEmpty()) {
                    var value = built.comparand(item.get("about").asText());
                    var source = Integer.parseInt(value.get("locator").asText().replaceFirst(":.*", ""));
                    asked.add(item.get("about").asText());
                    assertThat(Built.all(letter.get("sources")).stream().map(JsonNode::asInt))
                            .contains(source);
                    assertThat(letter.get("to").asText()).isEqualTo(owner(built, source, item));
                }
            }
        }
        var missing = Built.all(built.results().get("unknowns")).stream()
                .filter(u -> u.get("kind").asText().equals("asked"))
                .flatMap(u -> Built.all(u.get("values")).stream())
                .map(JsonNode::asText)
                .toList();
        assertThat(missing).isNotEmpty();
        assertThat(asked).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(missing);
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("the conditions asked for are those that keep a pair with this value from being compared")
    void conditionsOfPairs(Built built) {
        int conditions = 0;
        for (var letter : requests(built)) {
            for (var item : Built.all(letter.get("items"))) {
                var missing = Built.all(built.results().get("pairs")).stream()
                        .filter(p -> p.get("theirs")
                                        .asText()
                                        .equals(item.get("about").asText())
                                && p.get("standing").asText().equals("not-reported"))
                        .flatMap(p -> Built.all(p.get("conditions")).stream())
                        .filter(v -> v.get("verdict").asText().equals("not-reported")
                                && !v.get("role").asText().equals("qualifies")
                                && v.get("theirs").asText().equals("not reported"))
                        .map(v -> v.get("name").asText())
                        .distinct()
                        .toList();
                var wanted = Built.all(item.get("wanted")).stream()
                        .map(w -> w.get("what").asText())
                        .toList();
                assertThat(wanted)
                        .as(item.get("about").asText())
                        .doesNotHaveDuplicates()
                        .containsAll(missing);
                conditions += missing.size();
            }
        }
        assertThat(conditions).isGreaterThanOrEqualTo(0);
        assertThat(requests(built)).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("the text for e-mail holds every fact with its printed value, place and quote, in short lines")
    void texts(Built built) {
        for (var letter : requests(built)) {
            var text =
                    read(built.folder().resolve("requests/" + letter.get("id").asText() + ".txt"));
            var folded = text.replaceAll("\\s+", " ");
            assertThat(text.lines())
                    .allMatch(l -> l.length() <= 76 || !l.strip().contains(" "));
            assertThat(folded)
                    .contains("To: " + letter.get("to").asText())
                    .contains("From: "
                            + built.results().get("run").get("prepared-by").asText())
                    .contains("Invented data", "no patient data", "Please answer by: ____");
            for (var item : Built.all(letter.get("items"))) {
                assertThat(folded)
                        .contains(plain(item, "subject"))
                        .contains(plain(item, "printed"))
                        .contains(plain(item, "place"))
                        .contains(plain(item, "quote"))
                        .contains(plain(item, "why"));
                for (var wanted : Built.all(item.get("wanted"))) {
                    assertThat(folded)
                            .contains("Wanted: " + plain(wanted, "what") + " (" + plain(wanted, "form") + ")");
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("the command writes the same letters, and nothing else but the results they are drawn from")
    void command(Built built) throws IOException {
        var name = built.results().get("run").get("dossier").asText();
        var dossier = name.equals("filters") ? Libraries.FILTERS : Libraries.DEMO;
        var run = CommandLineUse.run("requests", dossier, "--out", temporary.toString());

        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        var folder = temporary.resolve(name + "-requests");
        try (var files = Files.list(folder)) {
            assertThat(files.map(f -> String.valueOf(f.getFileName())))
                    .containsExactlyInAnyOrder("checksums.sha256", "requests", "results.json", "results.schema.json");
        }
        for (var letter : requests(built)) {
            var file = "requests/" + letter.get("id").asText() + ".txt";
            assertThat(read(folder.resolve(file))).isEqualTo(read(built.folder().resolve(file)));
        }
    }

    /** The maker of the device for its own documents, the first author for a paper. */
    private static String owner(Built built, int source, JsonNode item) {
        var record = Built.all(built.results().get("sources")).get(source - 1);
        var kind = record.get("kind").asText();
        if (kind.equals("instructions-for-use") || kind.equals("flyer")) {
            return Built.all(built.results().get("devices")).stream()
                    .filter(d -> d.get("id").asText().equals(item.get("device").asText()))
                    .findFirst()
                    .orElseThrow()
                    .get("maker")
                    .asText();
        }
        var authors = record.get("reference").asText().replaceFirst("\\..*", "");
        return authors.contains(",") ? authors.replaceFirst(",.*", "") + " and co-authors" : authors;
    }

    private static List<JsonNode> requests(Built built) {
        return Built.all(built.results().get("requests"));
    }

    private static String plain(JsonNode node, String key) {
        return node.get(key).asText().replaceAll("[\\s\u00a0]+", " ");
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
