package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.FolderContent;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files laid over a library for one run. */
class LaidOverTest {

    private static final String PAPER = "sources/example-paper.yaml";

    @TempDir
    Path folder;

    private Path library;
    private Path over;

    @BeforeEach
    void copies() throws IOException {
        library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        over = folder.resolve("earlier");
        Files.createDirectories(over.resolve("sources"));
        Files.copy(library.resolve(PAPER), over.resolve(PAPER));
    }

    private CommandLineUse.Run check() {
        return CommandLineUse.run("check", library + "", "--over", over + "");
    }

    @Test
    @DisplayName("a file laid over is read in the place of the library's, is named in findings, and a note says so")
    void named() throws IOException {
        LibraryCopy.edit(over.resolve(PAPER), "metric: pressure-drop", "metric: pressure-drip");

        var run = check();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out())
                .contains("STOP metric-unknown  earlier/" + PAPER, "pressure-drip", "NOTE laid-over  earlier/" + PAPER);
        assertThat(CommandLineUse.run("check", library + "").code()).isZero();
    }

    @Test
    @DisplayName("build, trace, plan and requests read it too, and nothing is written into either folder")
    void commands() throws IOException {
        LibraryCopy.edit(over.resolve(PAPER), "64.1", "54.1");
        var dossier = library.resolve("dossiers/example.yaml") + "";
        var before = List.of(FolderContent.of(library), FolderContent.of(over));

        var trace = CommandLineUse.run("trace", dossier, "X1", "--over", over + "");
        var build = CommandLineUse.run(
                "build", dossier, "--over", over + "", "--for", "evidence", "--out", folder.resolve("out") + "");
        var inside = CommandLineUse.run("build", dossier, "--over", over + "", "--out", over.resolve("out") + "");

        assertThat(trace.out()).contains("54.1");
        assertThat(build.code()).as(build.err()).isZero();
        assertThat(Files.readString(folder.resolve("out/example/results.json")))
                .contains("\"laid-over\" : \"earlier/" + PAPER + "\"", "54.1 (SD 3.8) mmHg");
        assertThat(inside.code()).isEqualTo(2);
        assertThat(inside.err()).contains("output-in-library");
        assertThat(List.of(FolderContent.of(library), FolderContent.of(over))).isEqualTo(before);
    }

    @Test
    @DisplayName("a path that nothing in the library is read from is a finding, with the nearest one")
    void unknown() throws IOException {
        Files.createDirectories(over.resolve("source"));
        Files.move(over.resolve(PAPER), over.resolve("source/example-paper.yaml"));
        Files.createDirectories(over.resolve("templates"));
        Files.writeString(over.resolve("templates/talk.yaml"), "template: talk\n");

        var run = check();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out())
                .contains(
                        "STOP laid-over-unknown  earlier/source/example-paper.yaml",
                        "did you mean `" + PAPER + "`?",
                        "give the folder of these templates with `--templates DIR`");
    }

    @Test
    @DisplayName("a study file that the mapping does not name is a finding too; raw data are laid over like records")
    void data() throws IOException {
        var study = over.resolve("studies/example-bench");
        Files.createDirectories(study);
        Files.copy(library.resolve("studies/example-bench/runs.csv"), study.resolve("runs.csv"));
        LibraryCopy.edit(study.resolve("runs.csv"), "E-2,E,4.0,259,194", "E-2,E,4.0,x,194");
        assertThat(check().out()).contains("earlier/studies/example-bench/runs.csv:");

        Files.writeString(study.resolve("other.csv"), "a,b\n");
        assertThat(check().out()).contains("STOP laid-over-unknown  earlier/studies/example-bench/other.csv");
    }

    @Test
    @DisplayName("a folder that is not there is a finding, not the library as it stands")
    void missing() {
        var run = CommandLineUse.run("check", library + "", "--over", folder.resolve("none") + "");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).contains("STOP laid-over-missing");
    }
}
