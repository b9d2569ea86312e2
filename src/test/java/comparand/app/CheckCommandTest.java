package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import comparand.support.FolderContent;
import comparand.support.LibraryCopy;
import comparand.support.PrintedFinding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Findings, all of them, sorted, for people and for machines. */
class CheckCommandTest {

    @TempDir
    Path folder;

    private Path library = Path.of("");

    @BeforeEach
    void aLibrary() throws IOException {
        library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
    }

    @Test
    void aLibraryInOrderHasNoFindings() {
        var run = check();

        assertThat(run.code()).isZero();
        assertThat(run.out().strip()).isEqualTo("No findings.");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void theDemoHasNothingThatStopsOrHolds() {
        var run = CommandLineUse.run("check", "evidence");

        assertThat(run.code()).as(run.out()).isZero();
        assertThat(PrintedFinding.in(run.out())).allMatch(f -> f.severity().equals("NOTE"));
    }

    @Test
    void faultsOfAllFilesAreListedTogetherWithTheirNumber() throws IOException {
        manyFaults();

        var run = check();
        var found = PrintedFinding.in(run.out());

        assertThat(run.code()).isEqualTo(2);
        assertThat(found)
                .extracting(PrintedFinding::severity, PrintedFinding::code)
                .containsExactlyInAnyOrder(
                        tuple("STOP", "unit-missing"),
                        tuple("STOP", "device-unknown"),
                        tuple("STOP", "margin-without-reason"),
                        tuple("STOP", "label-unit"),
                        tuple("HOLD", "value-impossible"),
                        tuple("NOTE", "file-not-read"));
        assertThat(run.out().strip()).endsWith("6 findings: 4 STOP, 1 HOLD, 1 NOTE. Nothing was written.");
    }

    @Test
    void findingsAreSortedByWeightThenByPlace() throws IOException {
        manyFaults();

        var found = PrintedFinding.in(check().out());

        assertThat(found)
                .hasSizeGreaterThan(5)
                .isSortedAccordingTo(Comparator.comparingInt((PrintedFinding f) ->
                                List.of("STOP", "HOLD", "NOTE").indexOf(f.severity()))
                        .thenComparing(PrintedFinding::file)
                        .thenComparingInt(PrintedFinding::line)
                        .thenComparingInt(PrintedFinding::column));
    }

    @Test
    void everyFindingSaysWhyItMattersAndWhatToDo() throws IOException {
        manyFaults();

        var lines = check().out().lines().toList();

        assertThat(lines).filteredOn(l -> l.matches("  why: \\S.*")).hasSize(6);
        assertThat(lines).filteredOn(l -> l.matches("  fix: \\S.*")).hasSize(6);
    }

    @Test
    void machinesReadTheSameFindingsInTheSameOrder() throws IOException {
        manyFaults();

        var people = PrintedFinding.in(check().out());
        var run = CommandLineUse.run("check", library.toString(), "--findings", "json");
        var json = new ObjectMapper().readTree(run.out());
        var machines = new ArrayList<PrintedFinding>();
        json.get("findings").forEach(f -> machines.add(printed(f)));

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).isEmpty();
        assertThat(json.get("stopped").asBoolean()).isTrue();
        assertThat(machines).isEqualTo(people);
        json.get("findings").forEach(f -> {
            assertThat(f.get("why").asText()).isNotBlank();
            assertThat(f.get("length").asInt()).isPositive();
        });
    }

    @Test
    void noFindingsAreAnEmptyListForMachines() throws IOException {
        var run = CommandLineUse.run("check", library.toString(), "--findings", "json");
        var json = new ObjectMapper().readTree(run.out());

        assertThat(run.code()).isZero();
        assertThat(json.get("findings").isArray()).isTrue();
        assertThat(json.get("findings")).isEmpty();
        assertThat(json.get("stopped").asBoolean()).isFalse();
    }

    @Test
    void whatOnlyHoldsAValueOrIsNotedDoesNotStop() throws IOException {
        LibraryCopy.edit(source(), "mean: 64.1 mmHg", "mean: -64.1 mmHg");
        Files.writeString(library.resolve("sources/notes.txt"), "call the maker");

        var run = check();

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("2 findings: 1 HOLD, 1 NOTE.").doesNotContain("Nothing was written");
    }

    @Test
    void everyDossierOfTheLibraryIsChecked() throws IOException {
        var other = library.resolve("dossiers/other.yaml");
        Files.copy(library.resolve("dossiers/example.yaml"), other);
        LibraryCopy.edit(other, "dossier: example", "dossier: other");
        LibraryCopy.edit(other, "margin: 20 mL", "margin: 20");

        var run = check();

        assertThat(run.code()).isEqualTo(2);
        assertThat(PrintedFinding.in(run.out()))
                .extracting(PrintedFinding::place)
                .containsExactly("dossiers/other.yaml:22:13");
    }

    @Test
    void aDayThatHasNotComeIsAFindingOnTheDayOfTheCheck() throws IOException {
        LibraryCopy.edit(source(), "checked: 2026-11-01", "checked: " + CommandLineUse.TODAY.plusDays(1));

        assertThat(PrintedFinding.in(check().out())).singleElement().satisfies(f -> {
            assertThat(f.code()).isEqualTo("date-in-future");
            assertThat(f.place()).isEqualTo("sources/example-paper.yaml:11:35");
        });
    }

    @Test
    void theDayOfTheCheckItselfHasCome() throws IOException {
        LibraryCopy.edit(source(), "checked: 2026-11-01", "checked: " + CommandLineUse.TODAY);

        assertThat(PrintedFinding.in(check().out())).isEmpty();
    }

    @Test
    void aReportThatSpeaksOfADayThatHasNotComeIsAFinding() throws IOException {
        LibraryCopy.edit(library.resolve("dossiers/example.yaml"), "as-of: 2026-11-20", "as-of: 2031-11-20");

        assertThat(PrintedFinding.in(check().out()))
                .extracting(PrintedFinding::place)
                .contains("dossiers/example.yaml:7:8");
    }

    @Test
    void aFolderThatIsNotThereIsNamed() {
        var missing = folder.resolve("nowhere").toString();

        var run = CommandLineUse.run("check", missing);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).contains("STOP library-missing", missing, "comparand start " + missing);
    }

    @Test
    void aFileIsNoLibrary() {
        var run = CommandLineUse.run("check", source().toString());

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).contains("STOP library-missing", "is not a folder");
    }

    @Test
    void aFolderWithoutRecordsIsNoLibrary() throws IOException {
        var empty = Files.createDirectory(folder.resolve("empty"));

        var run = CommandLineUse.run("check", empty.toString());

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).contains("STOP library-empty", "devices/");
    }

    @Test
    void nothingIsWritten() {
        var before = FolderContent.of(folder);

        check();

        assertThat(FolderContent.of(folder)).isEqualTo(before);
    }

    private void manyFaults() throws IOException {
        LibraryCopy.edit(source(), "mean: 64.1 mmHg", "mean: 64.1");
        LibraryCopy.edit(source(), "device: example-device", "device: exmaple-device");
        LibraryCopy.edit(library.resolve("dossiers/example.yaml"), "    reason: one step of the syringe\n", "");
        LibraryCopy.edit(library.resolve("devices/present-device.yaml"), "0.5 to 6 L/min", "0.5 to 6 mmHg");
        LibraryCopy.edit(library.resolve("sources/example-ifu.yaml"), "60 mmHg", "6000 mmHg");
        Files.writeString(library.resolve("devices/notes.txt"), "call the maker");
    }

    private static PrintedFinding printed(JsonNode f) {
        return new PrintedFinding(
                f.get("severity").asText().toUpperCase(Locale.ROOT),
                f.get("code").asText(),
                f.get("file").asText() + ":" + f.get("line") + ":" + f.get("column"),
                f.get("message").asText(),
                f.get("fix").asText());
    }

    private CommandLineUse.Run check() {
        return CommandLineUse.run("check", library.toString());
    }

    private Path source() {
        return library.resolve("sources/example-paper.yaml");
    }
}
