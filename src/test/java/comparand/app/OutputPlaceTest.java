package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.FolderContent;
import comparand.support.LibraryCopy;
import comparand.write.whole.WholeFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Places that outputs may not go to, and places in which an earlier run did not come to its end. */
class OutputPlaceTest {

    @TempDir
    Path folder;

    private Path library = Path.of("");
    private Path out = Path.of("");

    @BeforeEach
    void aLibrary() throws IOException {
        library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        out = folder.resolve("out");
    }

    private CommandLineUse.Run build(Path into) {
        return CommandLineUse.run(
                "build",
                library.resolve("dossiers/example.yaml").toString(),
                "--for",
                "evidence",
                "--out",
                into.toString());
    }

    private void refused(Path into, String code, String message) {
        var before = FolderContent.of(folder);
        var run = build(into);
        assertThat(run.code()).isEqualTo(Exit.STOPPED);
        assertThat(run.err()).contains("STOP " + code, message).doesNotContain("\tat ");
        assertThat(FolderContent.of(folder)).isEqualTo(before);
    }

    @Test
    @DisplayName("a folder that holds the library is never replaced, even if it looks like an output")
    void holdsTheLibrary() throws IOException {
        build(out);
        var moved = out.resolve("example/library");
        Files.move(library, moved);
        library = moved;
        Files.delete(out.resolve("example/checksums.sha256"));

        refused(out, "output-over-library", "the library lies inside");
    }

    @Test
    @DisplayName("a link to a folder is followed: what it leads to is replaced, and the link stays")
    void link() throws IOException {
        var elsewhere = Files.createDirectories(folder.resolve("elsewhere/reports"));
        Files.createDirectories(out);
        var link = Files.createSymbolicLink(out.resolve("example"), elsewhere);

        assertThat(build(out).code()).isZero();
        assertThat(build(out).out()).contains("unchanged in " + link);
        assertThat(link).isSymbolicLink();
        assertThat(elsewhere.resolve("results.json")).isNotEmptyFile();
        try (var beside = Files.list(out)) {
            assertThat(beside).containsExactly(link);
        }
    }

    @Test
    @DisplayName("a link that leads nowhere is said to be one")
    void dangling() throws IOException {
        Files.createDirectories(out);
        Files.createSymbolicLink(out.resolve("example"), folder.resolve("nowhere"));

        refused(out, "output-unwritable", "is a link that leads nowhere");
    }

    @Test
    @DisplayName("a path that the system does not take is named with the system's reason")
    void tooLong() {
        refused(folder.resolve("x".repeat(300)), "output-unwritable", "File name too long");
    }

    @Test
    @DisplayName("while another writes there, a run stops at once; it says so and changes nothing")
    void busy() throws IOException {
        build(out);
        try (var other =
                WholeFolder.take(out.resolve("example"), Checksums::isWhole).orElseThrow()) {
            assertThat(other.isHalfway()).isFalse();
            refused(out, "output-busy", "another run is writing into");
        }
        assertThat(build(out).code()).isZero();
    }

    @Test
    @DisplayName(
            "what a run left that was cut off between its two renames is put right by any command that is given the place")
    void cutOff() throws IOException {
        build(out);
        var example = out.resolve("example");
        var content = FolderContent.of(example);
        var work = Files.createDirectory(out.resolve(".example.work"));
        Files.move(example, work.resolve("old"));
        LibraryCopy.of(work.resolve("old"), work.resolve("new"));

        var told = CommandLineUse.run("changes", example.toString(), example.toString());

        assertThat(told.code()).as(told.err()).isZero();
        assertThat(told.err()).contains("NOTE output-settled", "its outputs were whole, and stand in");
        assertThat(FolderContent.of(example)).isEqualTo(content);
        assertThat(work).doesNotExist();

        Files.createDirectory(work);
        Files.move(example, work.resolve("old"));
        Files.createDirectory(work.resolve("new"));
        Files.writeString(work.resolve("new/results.json"), "{\"cut");
        var built = build(out);
        assertThat(built.code()).isZero();
        assertThat(built.err()).contains("NOTE output-settled", "the output before it stands in");
        assertThat(built.out()).contains("unchanged in");
        assertThat(work).doesNotExist();
    }

    @Test
    @DisplayName("records that a command did not write to the end are written by the next command on the library")
    void records() throws IOException {
        var unfinished = Files.createDirectory(library.resolve(".unfinished-write"));
        Files.writeString(unfinished.resolve("0"), "half of a rec");

        var check = CommandLineUse.run("check", library.toString());

        assertThat(check.err()).contains("NOTE library-settled", "it had not begun, and every file is as it was");
        assertThat(unfinished).doesNotExist();
    }
}
