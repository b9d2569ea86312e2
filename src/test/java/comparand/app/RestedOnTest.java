package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.FolderContent;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What of a library the outputs of a dossier rest on, and what they are silent about. */
class RestedOnTest {

    private static final String PAPER = "sources/other-paper.yaml";

    @TempDir
    Path folder;

    private Path library = Path.of("");

    /** The blank library and a device that its dossier does not compare, with instructions for use and a paper. */
    @BeforeEach
    void anotherDevice() throws IOException {
        library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        other("devices/example-device.yaml", "devices/other-device.yaml");
        other("sources/example-ifu.yaml", "sources/other-ifu.yaml");
        other("sources/example-paper.yaml", PAPER);
    }

    private void other(String like, String file) throws IOException {
        Files.writeString(
                library.resolve(file),
                Files.readString(library.resolve(like))
                        .replace("example-", "other-")
                        .replace("Example Device", "Other Device")
                        .replace("id: E", "id: OE")
                        .replace("id: X", "id: OX")
                        .replace("kind: sd,", "kind: not stated,")
                        .replace("10.5555/example", "10.5555/other"));
    }

    private CommandLineUse.Run run() {
        return CommandLineUse.run(
                "build",
                library.resolve("dossiers/example.yaml").toString(),
                "--out",
                folder.resolve("out").toString());
    }

    private CommandLineUse.Run build() {
        var run = run();
        assertThat(run.code()).as(run.err()).isZero();
        return run;
    }

    private String results() throws IOException {
        return Files.readString(folder.resolve("out/example/results.json"));
    }

    @Test
    @DisplayName(
            "sources of devices that are not compared stand in no output, and what was found in them is told by check alone")
    void silent() throws IOException {
        var run = build();

        assertThat(results()).contains("example-paper").doesNotContain("other-paper", "other-ifu");
        assertThat(run.out() + run.err()).doesNotContain("other-paper");
        assertThat(CommandLineUse.run("check", library.toString()).out()).contains("spread-unlabelled", PAPER);
    }

    @Test
    @DisplayName("whatever becomes of them, the outputs stay the same bytes")
    void unchanged() throws IOException {
        build();
        var before = FolderContent.of(folder.resolve("out"));

        LibraryCopy.edit(library.resolve(PAPER), "64.1", "65.1");
        Files.writeString(
                library.resolve("sources/later-paper.yaml"),
                Files.readString(library.resolve(PAPER))
                        .replace("other-paper", "later-paper")
                        .replace("id: OX", "id: LX")
                        .replace("10.5555/other", "10.5555/later"));
        Files.writeString(
                library.resolve("dossiers/second.yaml"),
                Files.readString(library.resolve("dossiers/example.yaml"))
                        .replace("dossier: example", "dossier: second"));
        var run = build();

        assertThat(FolderContent.of(folder.resolve("out"))).isEqualTo(before);
        assertThat(run.out()).contains("unchanged in");
    }

    @Test
    @DisplayName("a source that takes the place of a kept one, or reports the same study, is kept with it")
    void related() throws IOException {
        LibraryCopy.edit(
                library.resolve(PAPER),
                "funding: independent\n",
                "funding: independent\nsame-study-as: example-paper\n");
        build();
        assertThat(results()).contains("other-paper").doesNotContain("other-ifu");
    }

    @Test
    @DisplayName("one that the dossier names is kept, whatever it is about")
    void named() throws IOException {
        LibraryCopy.edit(
                library.resolve("dossiers/example.yaml"),
                "questions:",
                "leave-out: [{what: other-paper, reason: of another device}]\nquestions:");
        build();
        assertThat(results()).contains("other-paper").doesNotContain("other-ifu");
    }

    @Test
    @DisplayName("a fault in one stops the build all the same: nobody knows what it was to say")
    void faulty() throws IOException {
        LibraryCopy.edit(library.resolve(PAPER), "metric: pressure-drop", "metric: presure-drop");
        var run = run();

        assertThat(run.code()).isEqualTo(Exit.STOPPED);
        assertThat(run.err()).contains(PAPER);
    }
}
