package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.Built;
import comparand.support.Specs;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What several sources say together reaches page and sheet; the numbers are those of {@code spec/pairs/together.yaml}. */
class SourcesTogetherTest {

    @TempDir
    Path folder;

    @Test
    @DisplayName("five sources: mean, spread between them, the range of a further study, and what it hangs on")
    void pooled() throws IOException {
        var built = built("together-4");

        assertThat(plain(built.pdf()))
                .contains("Published sources together")
                .contains("within the range expected of a further study, given the spread between 5 published sources")
                .contains("(41.7 to 74.4)")
                .contains("Sources differ among themselves by as much")
                .contains("No single source changes where our mean lies");
        assertThat(row(built, "58.1"))
                .contains("5", "58.1", "52.3", "63.8", "4.5", "0.93", "41.7", "74.4", "+6.2", "0.1", "12.3");
    }

    @Test
    @DisplayName("two sources: their difference, and no mean of two")
    void apart() throws IOException {
        var built = built("together-1");

        assertThat(plain(built.pdf()))
                .contains("Two sources cannot show how much published results vary, and are not pooled")
                .contains("They differ among themselves by +3.1");
        assertThat(row(built, "+3.1")).contains("2", "NA", "+3.1", "-1.6", "7.8");
    }

    private Built built(String id) throws IOException {
        var cases = Specs.of("pairs").stream()
                .flatMap(s -> StreamSupport.stream(s.get("cases").spliterator(), false))
                .filter(c -> c.get("id").asText().equals(id))
                .toList();
        var library = Specs.edited(Path.of("templates/blank"), cases.get(0).get("edits"), folder.resolve(id));
        return Built.of(library.resolve("dossiers/example.yaml").toString());
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ').replace('\u2212', '-');
    }

    /** The row of the sheet that holds a number; true minus signs as hyphens. */
    private static List<String> row(Built built, String number) {
        return built.workbook().stream()
                .map(r -> r.stream().map(SourcesTogetherTest::plain).toList())
                .filter(r ->
                        r.stream().anyMatch(c -> c.contains("together-") || c.contains("example-device/4.0 L/min")))
                .filter(r -> r.contains(number) && r.stream().anyMatch(c -> c.contains("ource")))
                .findFirst()
                .orElseThrow();
    }
}
