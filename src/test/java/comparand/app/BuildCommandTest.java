package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import comparand.support.FolderContent;
import comparand.support.LibraryCopy;
import comparand.support.PrintedFinding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where outputs go, and what is never lost to them. */
class BuildCommandTest {

    private static final List<String> FILES = List.of(
            "checksums.sha256",
            "committee-brief.pdf",
            "evidence-table.pdf",
            "evidence-workbook.xlsx",
            "figures",
            "manuscript.docx",
            "page.html",
            "requests",
            "results.json",
            "results.schema.json",
            "talk.pptx");

    @TempDir
    Path folder;

    private Path library = Path.of("");
    private Path out = Path.of("");

    @BeforeEach
    void aLibrary() throws IOException {
        library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        out = folder.resolve("out");
    }

    @Test
    void itWritesTheExpectedFilesAndNoOthersAndNamesThem() throws IOException {
        var run = build();

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(names(out)).containsExactly(".example.built-from", "example");
        assertThat(names(out.resolve("example"))).containsExactlyElementsOf(FILES);
        assertThat(run.out().lines().map(l -> l.replaceFirst("wrote (.*?)( \\(\\d+ files\\))?$", "$1")))
                .containsExactlyInAnyOrderElementsOf(FILES.stream()
                        .map(f -> out.resolve("example").resolve(f).toString())
                        .toList());
        assertThat(out.resolve("example"))
                .isDirectoryNotContaining(f -> Files.exists(f) && f.toFile().length() == 0);
    }

    @Test
    void theSameLibraryGivesTheSameBytes() {
        build();
        var first = FolderContent.of(out);

        assertThat(build().code()).isZero();
        assertThat(FolderContent.of(out)).isEqualTo(first);
    }

    @Test
    void anEarlierOutputIsReplacedWhole() throws IOException {
        build();
        var first = FolderContent.of(out);
        Files.writeString(out.resolve("example/talk.pptx"), "of a version that kept no fingerprints");
        Files.delete(out.resolve("example/checksums.sha256"));
        LibraryCopy.edit(library.resolve("dossiers/example.yaml"), "title: An example", "title: Another example");

        assertThat(build().code()).isZero();

        assertThat(names(out)).containsExactly(".example.built-from", "example");
        assertThat(names(out.resolve("example"))).containsExactlyElementsOf(FILES);
        assertThat(FolderContent.of(out)).isNotEqualTo(first);
        assertThat(out.resolve("example/results.json")).content().contains("Another example");
    }

    @Test
    void theLibraryIsNeverWrittenTo() {
        var before = FolderContent.of(library);

        build();

        assertThat(FolderContent.of(library)).isEqualTo(before);
    }

    @Test
    void anEmptyFolderIsFilled() throws IOException {
        Files.createDirectories(out.resolve("example"));

        assertThat(build().code()).isZero();
        assertThat(names(out.resolve("example"))).containsExactlyElementsOf(FILES);
    }

    @Test
    void otherOutputsBesideItStayAsTheyAre() throws IOException {
        Files.createDirectories(out.resolve("another"));
        Files.writeString(out.resolve("another/results.json"), "{}");

        assertThat(build().code()).isZero();
        assertThat(names(out)).containsExactly(".example.built-from", "another", "example");
        assertThat(out.resolve("another/results.json")).hasContent("{}");
    }

    @Test
    void aFolderThatHoldsSomethingElseIsRefusedAndLeftAlone() throws IOException {
        Files.createDirectories(out.resolve("example"));
        Files.writeString(out.resolve("example/thesis.txt"), "years of work");

        refusedAndUntouched("output-not-ours");
    }

    @Test
    void aFolderWithTheResultsOfAnotherProgramIsRefusedAndLeftAlone() throws IOException {
        Files.createDirectories(out.resolve("example"));
        Files.writeString(out.resolve("example/results.json"), "{\"votes\": 12}");
        Files.writeString(out.resolve("example/thesis.txt"), "years of work");

        refusedAndUntouched("output-not-ours");
    }

    @Test
    void aFileInPlaceOfTheFolderIsRefusedAndLeftAlone() throws IOException {
        Files.createDirectories(out);
        Files.writeString(out.resolve("example"), "years of work");

        refusedAndUntouched("output-not-ours");
    }

    @Test
    void aFileInPlaceOfTheFolderAboveIsRefusedAndLeftAlone() throws IOException {
        Files.writeString(out, "years of work");

        refusedAndUntouched("output-unwritable");
    }

    @ParameterizedTest(name = "--out {0}")
    @ValueSource(strings = {"library", "library/out", "library/sources", "library/../library/out", "out/../library"})
    void anOutputInsideTheLibraryIsRefused(String inside) {
        var before = FolderContent.of(folder);

        var run = build(folder.resolve(inside));

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("STOP output-in-library", "--out DIR");
        assertThat(FolderContent.of(folder)).isEqualTo(before);
    }

    @Test
    void anOutputInsideTheLibraryBehindALinkIsRefused() throws IOException {
        Files.createSymbolicLink(folder.resolve("link"), library);
        var before = FolderContent.of(folder);

        var run = build(folder.resolve("link/out"));

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("STOP output-in-library");
        assertThat(FolderContent.of(folder)).isEqualTo(before);
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "dossiers/nothing.yaml",
                "dossiers",
                "dossiers/example",
                "sources/example-paper.yaml",
                "studies/example-bench/runs.csv",
                "."
            })
    void aPathThatIsNoDossierIsNamed(String path) {
        var file = library.resolve(path).toString();

        var run = CommandLineUse.run("build", file, "--out", out.toString());

        assertThat(run.code()).isEqualTo(2);
        assertThat(PrintedFinding.in(run.err())).singleElement().satisfies(f -> {
            assertThat(f.code()).isEqualTo("dossier-missing");
            assertThat(f.file()).isEqualTo(file);
            assertThat(f.message()).contains(file);
        });
        assertThat(out).doesNotExist();
    }

    @Test
    void aDossierMayBeNamedByARoundaboutPath() {
        var path = library.resolve("sources/../dossiers/./example.yaml").toString();

        var run = CommandLineUse.run("build", path, "--out", out.toString());

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(out.resolve("example/results.json")).isRegularFile();
    }

    @Test
    void aFaultInAnotherDossierDoesNotStopThisOne() throws IOException {
        var other = library.resolve("dossiers/other.yaml");
        Files.copy(library.resolve("dossiers/example.yaml"), other);
        LibraryCopy.edit(other, "dossier: example", "dossier: other");
        LibraryCopy.edit(other, "margin: 20 mL", "margin: 20");

        assertThat(build().code()).isZero();
        assertThat(CommandLineUse.run("build", other.toString(), "--out", out.toString())
                        .code())
                .isEqualTo(2);
        assertThat(names(out)).containsExactly(".example.built-from", "example");
    }

    @Test
    void whatHoldsAValueIsPrintedAndTheOutputsAreWritten() throws IOException {
        LibraryCopy.edit(library.resolve("sources/example-paper.yaml"), "mean: 64.1 mmHg", "mean: -64.1 mmHg");

        var run = build();

        assertThat(run.code()).isZero();
        assertThat(run.err())
                .contains("HOLD value-impossible", "1 finding: 1 HOLD.")
                .doesNotContain("Nothing was");
        assertThat(run.out()).contains("wrote ");
        assertThat(out.resolve("example/results.json")).content().contains("value-impossible");
    }

    @Test
    void findingsForMachinesAreTheWholeOfTheOutput() throws IOException {
        var run = CommandLineUse.run("build", dossier(), "--out", out.toString(), "--findings", "json");

        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        var json = new ObjectMapper().readTree(run.out());
        assertThat(json.get("findings")).isEmpty();
        assertThat(json.get("stopped").asBoolean()).isFalse();
        assertThat(names(out.resolve("example"))).containsExactlyElementsOf(FILES);
    }

    @Test
    void findingsForMachinesThatStopTheBuildAreTheWholeOfTheOutput() throws IOException {
        LibraryCopy.edit(library.resolve("sources/example-paper.yaml"), "mean: 64.1 mmHg", "mean: 64.1");

        var run = CommandLineUse.run("build", dossier(), "--out", out.toString(), "--findings", "json");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).isEmpty();
        var json = new ObjectMapper().readTree(run.out());
        assertThat(json.get("findings")).hasSize(1);
        assertThat(json.get("findings").get(0).get("code").asText()).isEqualTo("unit-missing");
        assertThat(json.get("stopped").asBoolean()).isTrue();
        assertThat(out).doesNotExist();
    }

    private void refusedAndUntouched(String code) {
        var before = FolderContent.of(folder);

        var run = build();

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(PrintedFinding.in(run.err())).singleElement().satisfies(f -> {
            assertThat(f.code()).isEqualTo(code);
            assertThat(f.file()).isEqualTo(out.resolve("example").toString());
        });
        assertThat(FolderContent.of(folder)).isEqualTo(before);
    }

    private CommandLineUse.Run build() {
        return build(out);
    }

    private CommandLineUse.Run build(Path into) {
        return CommandLineUse.run("build", dossier(), "--out", into.toString());
    }

    private String dossier() {
        return library.resolve("dossiers/example.yaml").toString();
    }

    private static List<String> names(Path folder) throws IOException {
        try (var entries = Files.list(folder)) {
            return entries.map(p -> String.valueOf(p.getFileName())).sorted().toList();
        }
    }
}
