package comparand.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import comparand.app.CommandLineUse;
import comparand.support.Built;
import comparand.support.EveryByte;
import comparand.support.LibraryCopy;
import comparand.support.MarkedCases;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What travels says nothing of a single patient: neither a name or a remark, nor a number out of a row, nor what was found
 * in a row with the numbers it was found by.
 */
class NoPatientInOutputsTest {

    private static final String DOSSIER = "dossiers/small-oxygenators.yaml";
    private static final Pattern LONG_NUMBER = Pattern.compile("\\d+[.,]\\d{5,}");
    private static final String STUDY = "studies/three-hospitals/";

    @TempDir
    Path folder;

    private Path library = Path.of("");
    private Set<String> numbers = Set.of();

    @BeforeEach
    void aLibraryWithMarks() throws IOException {
        library = LibraryCopy.of(Path.of("evidence"), folder.resolve("library"));
        numbers = MarkedCases.in(library.resolve(STUDY));
    }

    @Test
    @DisplayName("without leave, no name, remark or number of a patient's row is in any output, seen or not")
    void nothingOfAPatient() throws IOException {
        LibraryCopy.edit(library.resolve(DOSSIER), "show-cases: yes", "show-cases: no");
        var built = built();
        var texts = EveryByte.of(folder.resolve("out"));

        // the author is told all of it at the terminal, so there was something to keep back
        assertThat(built.err())
                .contains(MarkedCases.WHO + "N-03` occurs in Lake Ferran and Norrisgate", "`patient-weight` 399.9");
        assertThat(naming(texts)).isEmpty();
        assertThat(numbersIn(texts)).isEmpty();
        assertThat(texts.get("small-oxygenators/results.json"))
                .contains("case-in-two-centres", "input-impossible")
                .doesNotContain("399.9", "333.3");
        assertThat(each(texts)).isEmpty();
    }

    @Test
    @DisplayName("with leave, results of single cases are shown, without who they are of")
    void pointsWithoutNames() {
        built();
        var outputs = EveryByte.of(folder.resolve("out"));

        assertThat(each(outputs)).isNotEmpty();
        assertThat(naming(outputs)).isEmpty();
        // the search would find them: it reads each kind of output, and finds the marks where they are
        assertThat(Stream.of(
                        ".pdf!pages", ".pdf!strings", ".docx!", ".pptx!", ".xlsx!", ".html", ".json", ".svg", ".txt"))
                .allSatisfy(kind -> assertThat(outputs)
                        .anySatisfy((name, text) -> assertThat(name + text).contains(kind, "Mirrowen")));
        assertThat(outputs).anySatisfy((name, text) -> assertThat(name).matches(".*pptx!.*xlsx!.*"));
        var raw = EveryByte.of(library.resolve(STUDY));
        assertThat(naming(raw)).anyMatch(n -> n.contains(".csv")).anyMatch(n -> n.contains(".xlsx!"));
        assertThat(numbersIn(raw)).anyMatch(n -> n.contains(".csv")).anyMatch(n -> n.contains(".xlsx!"));
    }

    private CommandLineUse.Run built() {
        var out = folder.resolve("out").toString();
        var run = CommandLineUse.run("build", library.resolve(DOSSIER).toString(), "--out", out);
        assertThat(run.code()).as(run.err()).isZero();
        return run;
    }

    /** Lists of single results of cases in the data. */
    private static List<String> each(Map<String, String> texts) {
        try {
            var results = new ObjectMapper().readTree(texts.get("small-oxygenators/results.json"));
            return Built.all(results.get("comparands")).stream()
                    .filter(c ->
                            c.at("/sizes").has("cases") && c.at("/summary/each").size() > 0)
                    .map(c -> c.get("id").asText())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Where marked numbers stand, with a point or a comma. */
    private Set<String> numbersIn(Map<String, String> texts) {
        var found = new TreeSet<String>();
        texts.forEach((name, text) -> {
            var number = LONG_NUMBER.matcher(text);
            while (number.find()) {
                if (numbers.contains(number.group().replace(',', '.'))) {
                    found.add(name + ": " + number.group());
                }
            }
        });
        return found;
    }

    private static Set<String> naming(Map<String, String> texts) {
        var found = new TreeSet<String>();
        texts.forEach((name, text) -> {
            int at = text.toLowerCase(Locale.ROOT).indexOf(MarkedCases.WHO.toLowerCase(Locale.ROOT));
            if (at >= 0) {
                found.add(name + ": " + text.substring(Math.max(0, at - 60), Math.min(text.length(), at + 60)));
            }
        });
        return found;
    }
}
