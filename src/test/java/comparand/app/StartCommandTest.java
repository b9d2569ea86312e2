package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.FolderContent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A new library, from the program alone. */
class StartCommandTest {

    private static final Path BLANK = Path.of("templates/blank");

    @TempDir
    Path folder;

    @Test
    void aNewLibraryHasNoFindingsAndBuilds() {
        var library = folder.resolve("deep/down/my-library");

        var start = CommandLineUse.run("start", library.toString());
        var check = CommandLineUse.run("check", library.toString());
        var build = CommandLineUse.run(
                "build",
                library.resolve("dossiers/example.yaml").toString(),
                "--out",
                folder.resolve("out").toString());

        assertThat(start.code()).as(start.err()).isZero();
        assertThat(check.code()).isZero();
        assertThat(check.out().strip()).isEqualTo("No findings.");
        assertThat(build.code()).as(build.err()).isZero();
        assertThat(build.err()).isEmpty();
        assertThat(folder.resolve("out/example/results.json")).isRegularFile();
    }

    @Test
    void itSaysWhatToTypeNext() {
        var library = folder.resolve("my-library");

        var run = CommandLineUse.run("start", library.toString());

        assertThat(run.out())
                .contains("comparand check " + library)
                .contains("comparand build " + library.resolve("dossiers/example.yaml"));
    }

    @Test
    void everyRecordAmongTheTemplatesIsWrittenByteForByte() throws IOException {
        var library = folder.resolve("my-library");
        CommandLineUse.run("start", library.toString());

        var templates = files(BLANK);
        assertThat(templates).hasSizeGreaterThanOrEqualTo(9).containsExactlyInAnyOrderElementsOf(StartCommand.FILES);
        for (var file : templates) {
            assertThat(library.resolve(file)).hasSameBinaryContentAs(BLANK.resolve(file));
        }
    }

    @Test
    void theTemplatesOfReportsLieBesideTheRecords() throws IOException {
        var library = folder.resolve("my-library");
        CommandLineUse.run("start", library.toString());

        assertThat(files(library.resolve("templates"))).containsExactlyInAnyOrderElementsOf(StartCommand.REPORTS);
        for (var report : StartCommand.REPORTS) {
            assertThat(library.resolve("templates").resolve(report))
                    .hasSameBinaryContentAs(Path.of("templates").resolve(report));
        }
    }

    @Test
    void theSchemasForEditorsLieBesideTheRecords() throws IOException {
        var library = folder.resolve("my-library");
        CommandLineUse.run("start", library.toString());

        var schemas = files(Path.of("templates/schema"));
        assertThat(files(library.resolve("schemas"))).containsExactlyElementsOf(schemas);
        for (var schema : schemas) {
            assertThat(library.resolve("schemas").resolve(schema))
                    .hasSameBinaryContentAs(Path.of("templates/schema").resolve(schema));
        }
    }

    @Test
    void nothingElseIsWritten() throws IOException {
        var library = folder.resolve("my-library");
        CommandLineUse.run("start", library.toString());

        assertThat(files(library))
                .allMatch(
                        f -> StartCommand.FILES.contains(f) || f.startsWith("schemas/") || f.startsWith("templates/"));
        assertThat(folder).isDirectoryNotContaining(p -> !p.equals(library));
    }

    @Test
    void anEmptyFolderIsFilled() throws IOException {
        var library = Files.createDirectory(folder.resolve("empty"));

        assertThat(CommandLineUse.run("start", library.toString()).code()).isZero();
        assertThat(library.resolve("dossiers/example.yaml")).isRegularFile();
    }

    @Test
    void aFolderWithSomethingInItIsRefusedAndLeftAlone() throws IOException {
        var library = Files.createDirectory(folder.resolve("taken"));
        Files.writeString(library.resolve("thesis.txt"), "years of work");
        var before = FolderContent.of(folder);

        var run = CommandLineUse.run("start", library.toString());

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(library.toString(), "not empty");
        assertThat(FolderContent.of(folder)).isEqualTo(before);
    }

    @Test
    void aLibraryIsNotStartedTwice() {
        var library = folder.resolve("my-library");
        CommandLineUse.run("start", library.toString());
        var before = FolderContent.of(folder);

        assertThat(CommandLineUse.run("start", library.toString()).code()).isEqualTo(2);
        assertThat(FolderContent.of(folder)).isEqualTo(before);
    }

    @Test
    void aFileInTheWayIsRefusedAndLeftAlone() throws IOException {
        var file = Files.writeString(folder.resolve("thesis.txt"), "years of work");

        assertThat(CommandLineUse.run("start", file.toString()).code()).isEqualTo(2);
        assertThat(file).hasContent("years of work");
    }

    @Test
    void aFolderBelowAFileIsTheUsersSlipAndNoFaultOfTheTool() throws IOException {
        var file = Files.writeString(folder.resolve("thesis.txt"), "years of work");

        var run = CommandLineUse.run("start", file.resolve("library").toString());

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains(file.toString()).doesNotContain("fault of the tool");
        assertThat(file).hasContent("years of work");
    }

    /** The files below a folder, by their paths from there, sorted. */
    private static List<String> files(Path folder) throws IOException {
        try (var paths = Files.walk(folder)) {
            return paths.filter(Files::isRegularFile)
                    .map(p -> folder.relativize(p).toString())
                    .sorted()
                    .toList();
        }
    }
}
