package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as the system starts it: a process of its own, in a working directory of its own. */
class ProgramTest {

    @TempDir
    Path folder;

    @BeforeEach
    void aLibraryLiesInTheWorkingDirectory() throws IOException {
        LibraryCopy.of(Path.of("templates/blank"), folder.resolve("my-library"));
    }

    @Test
    void aBuildByRelativePathPutsItsOutputsBelowTheWorkingDirectory() throws Exception {
        var run = program(folder, "build", "my-library/dossiers/example.yaml");

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out().lines()).allMatch(l -> l.startsWith("wrote target/reports/example/"));
        assertThat(folder.resolve("target/reports/example/results.json")).isRegularFile();
    }

    @Test
    void aBuildFromWithinTheLibraryWorksWithPathsFromThere() throws Exception {
        var dossiers = folder.resolve("my-library/dossiers");

        var run = program(dossiers, "build", "example.yaml", "--out", "../../reports");

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(folder.resolve("reports/example/results.json")).isRegularFile();
    }

    @Test
    void aBuildFromWithinTheLibraryDoesNotPutItsOutputsThere() throws Exception {
        var library = folder.resolve("my-library");

        var run = program(library, "build", "dossiers/example.yaml");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("STOP output-in-library", "`target/reports/example` lies inside the library");
        assertThat(library.resolve("target")).doesNotExist();
    }

    @Test
    void findingsEndTheProcessWithTwoAndNameFilesAsSeenFromTheLibrary() throws Exception {
        LibraryCopy.edit(folder.resolve("my-library/sources/example-paper.yaml"), "mean: 64.1 mmHg", "mean: 64.1");

        var run = program(folder, "check", "my-library");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).contains("STOP unit-missing  sources/example-paper.yaml:20:11", "  20 |     mean: 64.1");
    }

    @Test
    void signsBeyondTheAlphabetArePrintedAsUtf8WhateverTheSystemUses() throws Exception {
        var run = program(folder, "catalogue", "pressure-drop");

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("ΔP = P_in - P_out", "± 5 %");
    }

    private static CommandLineUse.Run program(Path directory, String... args) throws IOException, InterruptedException {
        var command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "comparand.app.Main"));
        command.addAll(List.of(args));
        var out = Files.createTempFile("comparand", ".out");
        var err = Files.createTempFile("comparand", ".err");
        var builder = new ProcessBuilder(command)
                .directory(directory.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().remove("JAVA_TOOL_OPTIONS");
        builder.environment().put("LC_ALL", "C");
        builder.environment().put("SOURCE_DATE_EPOCH", "1795132800");
        try {
            int code = builder.start().waitFor();
            return new CommandLineUse.Run(
                    code, Files.readString(out, StandardCharsets.UTF_8), Files.readString(err, StandardCharsets.UTF_8));
        } finally {
            Files.delete(out);
            Files.delete(err);
        }
    }
}
