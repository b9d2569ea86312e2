package comparand.app;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import comparand.model.Comparand;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The order in which rows and columns stand in a raw file says nothing, and changes nothing: not even the last bit. */
class RowOrderTest {

    private static final String DEMO = "evidence";
    private static final List<RawFile> FILES = List.of(
            new RawFile("bench-norrisgate/flow-runs.csv", ",", UTF_8),
            new RawFile("bench-norrisgate/exchanger-runs.csv", ",", UTF_8),
            new RawFile("bench-norrisgate/haemolysis-runs.csv", ",", UTF_8),
            new RawFile("bench-norrisgate/bubble-runs.csv", ",", UTF_8),
            new RawFile("three-hospitals/norrisgate-cases.csv", ",", UTF_8),
            new RawFile("three-hospitals/norrisgate-samples.csv", ",", UTF_8),
            new RawFile("three-hospitals/lake-ferran-faelle.csv", ";", Charset.forName("windows-1252")),
            new RawFile("three-hospitals/lake-ferran-labor.csv", ";", Charset.forName("windows-1252")),
            new RawFile("three-hospitals/lake-ferran-proben.csv", ";", Charset.forName("windows-1252")));

    private record RawFile(String name, String separator, Charset encoding) {}

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void rowsAndColumnsInAnyOrderGiveTheSameComparands(long seed) throws IOException {
        var shuffled = LibraryCopy.of(Path.of(DEMO), folder.resolve("shuffled"));
        for (var file : FILES) {
            shuffle(shuffled.resolve("studies").resolve(file.name), file.separator, file.encoding, new Random(seed));
        }

        assertThat(summaries(shuffled)).isEqualTo(summaries(Path.of(DEMO)));
    }

    @Test
    void theShuffledFilesAreNotTheOldOnes() throws IOException {
        var file = Files.writeString(folder.resolve("x.csv"), "a,b,c\n1,2,3\n4,5,6\n7,8,9\n");

        shuffle(file, ",", UTF_8, new Random(1));

        assertThat(Files.readString(file))
                .doesNotStartWith("a,b,c")
                .contains("7")
                .hasSize(24);
    }

    private static List<String> summaries(Path library) {
        var local = DossierFile.of(library.resolve("dossiers/small-oxygenators.yaml"))
                .then(Pipeline::evidence)
                .<List<Comparand>>fold((evidence, findings) -> evidence.local(), findings -> {
                    throw new AssertionError(findings.toString());
                });
        assertThat(local).hasSizeGreaterThan(30);
        return local.stream().map(RowOrderTest::text).toList();
    }

    private static String text(Comparand c) {
        return c.id() + " " + c.summary() + " " + c.sizes() + " " + c.conditions() + " " + c.definition();
    }

    private static void shuffle(Path file, String separator, Charset encoding, Random random) throws IOException {
        var rows = Files.readAllLines(file, encoding).stream()
                .map(l -> List.of(l.split(separator, -1)))
                .toList();
        var columns = IntStream.range(0, rows.get(0).size()).boxed().collect(Collectors.toCollection(ArrayList::new));
        Collections.shuffle(columns, random);
        var body = new ArrayList<>(rows.subList(1, rows.size()));
        Collections.shuffle(body, random);
        var all = new ArrayList<List<String>>();
        all.add(rows.get(0));
        all.addAll(body);
        Files.writeString(
                file,
                all.stream()
                        .map(r -> columns.stream().map(r::get).collect(Collectors.joining(separator)) + "\n")
                        .collect(Collectors.joining()),
                encoding);
    }
}
