package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.FolderContent;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What somebody has written into an output is never lost to the next build. */
class EditedOutputTest {

    @TempDir
    Path folder;

    private Path library = Path.of("");
    private Path out = Path.of("");

    @BeforeEach
    void anOutput() throws IOException {
        library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        out = folder.resolve("out");
        assertThat(build().code()).isZero();
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"manuscript.docx", "evidence-workbook.xlsx", "notes of the author.txt"})
    @DisplayName("a file that was changed or added stops the build, and nothing is written")
    void changed(String file) throws IOException {
        var path = out.resolve("example").resolve(file);
        Files.writeString(path, "rewritten", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        var before = FolderContent.of(out);

        var run = build();

        assertThat(run.code()).isEqualTo(Exit.STOPPED);
        assertThat(run.err()).contains("output-edited", file, "move it away", "--out DIR");
        assertThat(FolderContent.of(out)).isEqualTo(before);
        Files.delete(path);
        assertThat(build().code()).isZero();
        assertThat(build().code()).isZero();
    }

    @Test
    @DisplayName("the mark of an office program at work is nobody's work")
    void lock() throws IOException {
        Files.writeString(out.resolve("example/.~lock.manuscript.docx#"), "open");

        assertThat(build().code()).isZero();
    }

    @Test
    @DisplayName("the fingerprints are those that sha256sum finds, one for each file")
    void fingerprints() throws IOException {
        var process = new ProcessBuilder("sha256sum", "--check", "--strict", "checksums.sha256")
                .directory(out.resolve("example").toFile())
                .start();

        assertThat(process.onExit().join().exitValue()).isZero();
        try (var files = Files.walk(out.resolve("example"))) {
            assertThat(Files.readAllLines(out.resolve("example/checksums.sha256")))
                    .hasSize((int) files.filter(Files::isRegularFile).count() - 1);
        }
    }

    private CommandLineUse.Run build() {
        return CommandLineUse.run(
                "build", library.resolve("dossiers/example.yaml").toString(), "--out", out.toString());
    }
}
