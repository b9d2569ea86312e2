package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows left out by another decision give what the same rows left out by their line give. */
class RowDecisionsTest {

    private static final Path BLANK = Path.of("templates/blank");
    private static final String DROPPED = "    dropped:\n      - {line: 9, reason: transducer had come loose}\n";

    @TempDir
    Path folder;

    private Path library(String name) throws IOException {
        return LibraryCopy.of(BLANK, folder.resolve(name));
    }

    private static Path study(Path library) {
        return library.resolve("studies/example-bench/study.yaml");
    }

    private static Path runs(Path library) {
        return library.resolve("studies/example-bench/runs.csv");
    }

    private static List<String> results(Path library) {
        return LocalEvidence.of(library.resolve("dossiers/example.yaml")).stream()
                .map(c -> c.id() + " " + c.summary() + " " + c.sizes())
                .toList();
    }

    @Test
    void aRuleLeavesOutWhatItsWordsName() throws IOException {
        var library = library("rule");
        LibraryCopy.edit(
                study(library),
                DROPPED,
                "    drop-when:\n      - {column: note, is: [transducer loose, clotted], reason: transducer had come loose}\n");

        assertThat(results(library)).isNotEmpty().isEqualTo(results(BLANK));
    }

    @Test
    void theSecondOfTwoEqualRowsIsLeftOut() throws IOException {
        var library = library("second");
        LibraryCopy.edit(
                runs(library), "E-2,E,4.0,259,194,119,\n", "E-2,E,4.0,259,194,119,\nE-2,E,4.0,259,194,119,again\n");
        LibraryCopy.edit(study(library), "{line: 9,", "{line: 10,");
        LibraryCopy.edit(
                study(library),
                "    dropped:",
                "    duplicates: {rows: drop-second, reason: exported twice}\n    dropped:");

        assertThat(results(library)).isEqualTo(results(BLANK));
    }

    @Test
    void namesThatDifferInWhatIsDeclaredNotToCountAreOne() throws IOException {
        var plain = library("plain");
        LibraryCopy.edit(study(plain), DROPPED, "");
        var retyped = library("retyped");
        LibraryCopy.edit(study(retyped), DROPPED, "");
        LibraryCopy.edit(runs(retyped), "P-4,P,4.0,277", "p - 04,P,4.0,277");
        var declared = LibraryCopy.of(retyped, folder.resolve("declared"));
        LibraryCopy.edit(
                study(declared),
                "unit: {holds: unit}",
                "unit: {holds: unit, ignoring: [spaces, letter-case, leading-zeros]}");

        assertThat(results(declared)).isEqualTo(results(plain));
        assertThat(results(retyped)).isNotEqualTo(results(plain));
    }
}
