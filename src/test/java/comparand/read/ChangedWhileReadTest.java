package comparand.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import comparand.model.RowSource;
import comparand.model.UnreadableRows;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rows that are counted are of the bytes whose fingerprint is printed. */
class ChangedWhileReadTest {

    @TempDir
    Path folder;

    private Path file = Path.of("");

    @BeforeEach
    void aLibrary() throws IOException {
        LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        file = folder.resolve("library/studies/example-bench/runs.csv");
    }

    /** Any step on a file. */
    private interface Step {
        void take() throws IOException;
    }

    private RowSource rows() {
        return LibraryReader.read(folder.resolve("library"))
                .fold((library, notes) -> library.data().values().iterator().next(), stops -> {
                    throw new AssertionError(stops);
                });
    }

    private static UnreadableRows readWhile(RowSource rows, Step step) {
        boolean[] taken = {false};
        return catchThrowableOfType(
                UnreadableRows.class,
                () -> rows.forEach(row -> {
                    try {
                        if (!taken[0]) {
                            taken[0] = true;
                            step.take();
                        }
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                }));
    }

    @Test
    @DisplayName("a file that nobody touches is read as often as wanted")
    void steady() {
        var rows = rows();
        rows.forEach(row -> {});
        rows.forEach(row -> {});
    }

    @Test
    @DisplayName(
            "a file that grows, is replaced, or goes away while it is read stops the run, which is to be run again")
    void changed() throws IOException {
        var grown = readWhile(rows(), () -> Files.writeString(file, "\n", StandardOpenOption.APPEND));
        assertThat(grown.problem()).isEqualTo("this file was changed while it was read");
        assertThat(grown.fix()).contains("run this again");
        assertThat(grown.place().file()).isEqualTo("studies/example-bench/runs.csv");

        var other = Files.copy(file, folder.resolve("other.csv"));
        var replaced = readWhile(rows(), () -> {
            Files.delete(file);
            Files.move(other, file);
        });
        assertThat(replaced.problem()).isEqualTo("this file was changed while it was read");

        assertThat(readWhile(rows(), () -> Files.delete(file)).problem()).contains("went away");
    }

    @Test
    @DisplayName("a change between the fingerprint and the rows is seen, too, even where size and time say nothing")
    void betweenTheTwo() throws IOException {
        var rows = rows();
        var time = Files.getLastModifiedTime(file);
        var text = Files.readString(file);
        int at = text.lastIndexOf('1');
        Files.writeString(file, text.substring(0, at) + "2" + text.substring(at + 1));
        Files.setLastModifiedTime(file, time);

        assertThat(readWhile(rows, () -> {}).problem()).isEqualTo("this file was changed while it was read");
    }
}
