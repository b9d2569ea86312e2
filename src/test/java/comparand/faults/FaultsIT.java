package comparand.faults;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.app.CommandLineUse;
import comparand.faults.KilledBuilds.Found;
import comparand.support.FolderContent;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever stops the packaged tool: the old output stands whole, or the new one, and what is said of it is so. */
class FaultsIT {

    @TempDir
    Path folder;

    @Test
    @DisplayName(
            "builds that are killed leave the old output or the new one; between two renames the next command ends it")
    void killedBuilds() throws Exception {
        var builds = new KilledBuilds(folder, 3);
        int cutOff = 0;
        for (int i = 0; i < 5; i++) {
            for (var kill : List.of(builds.atAnyMoment(), builds.atTheExchange())) {
                assertThat(kill.then()).isIn(Found.OLD, Found.NEW);
                assertThat(kill.saidSo()).isEqualTo(kill.leftovers() && kill.saidSo());
                cutOff += kill.leftovers() ? 1 : 0;
            }
        }
        assertThat(cutOff).as("builds that were cut off while they wrote").isPositive();
    }

    @Test
    @DisplayName("commands that write several records leave all of them or none")
    void killedRecords() throws Exception {
        var records = new KilledRecords(folder, 4);
        int cutOff = 0;
        for (int i = 0; i < 2; i++) {
            cutOff += records.start().inTime() ? 1 : 0;
            cutOff += records.references().inTime() ? 1 : 0;
        }
        assertThat(cutOff).as("commands that were cut off").isPositive();
    }

    @Test
    @DisplayName("a disk that takes no more leaves the earlier output as it was, and the message says so")
    void smallDisk() throws Exception {
        var disk = new SmallDisk(folder);
        disk.first();
        for (int blocks : new int[] {8, 48, 150}) {
            assertThat(disk.withFilesUpTo(blocks).run().said())
                    .as("%d blocks", blocks)
                    .contains("File too large");
        }
        assertThat(disk.withFilesUpTo(4000).isWritten()).isTrue();
    }

    @Test
    @DisplayName("of two builds into one folder at once each is written or says that the other is writing")
    void twoAtOnce() throws Exception {
        var library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        var both = new ArrayList<Process>();
        for (var language : List.of("en", "de", "en")) {
            both.add(Tool.start(
                    Tool.command(
                            "build",
                            library.resolve("dossiers/example.yaml").toString(),
                            "--for",
                            "evidence",
                            "--language",
                            language,
                            "--out",
                            folder.resolve("reports").toString()),
                    folder));
        }
        var runs = both.stream().map(Tool::end).toList();

        assertThat(runs).anyMatch(r -> r.code() == 0).allSatisfy(r -> {
            if (r.code() != 0) {
                assertThat(r.code()).isEqualTo(2);
                assertThat(r.said()).contains("STOP output-busy", "this one changed nothing");
            }
        });
        var sums = new ProcessBuilder("sha256sum", "--check", "--strict", "--quiet", "checksums.sha256")
                .directory(folder.resolve("reports/example").toFile())
                .start();
        assertThat(sums.waitFor()).isZero();
        try (var beside = Files.list(folder.resolve("reports"))) {
            assertThat(beside.map(p -> p.getFileName().toString()))
                    .containsExactlyInAnyOrder("example", ".example.built-from");
        }
    }

    /** A command by somebody whom permissions bind: root is not. */
    private static List<String> asSomebody(List<String> command) throws IOException {
        var root = new ProcessBuilder("id", "-u").start();
        var words = new ArrayList<String>();
        if (new String(root.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8)
                .strip()
                .equals("0")) {
            words.addAll(List.of("setpriv", "--reuid=65534", "--regid=65534", "--clear-groups"));
        }
        words.addAll(command);
        return words;
    }

    /** A copy of the tool where anybody may read it, and a library and an output that anybody may read. */
    private List<String> readable(String... arguments) throws IOException {
        var open = PosixFilePermissions.fromString("rwxr-xr-x");
        Files.setPosixFilePermissions(folder, open);
        var tool = folder.resolve("tool");
        if (!Files.exists(tool)) {
            LibraryCopy.of(Tool.HOME, tool);
            Files.setPosixFilePermissions(tool.resolve("bin/comparand"), open);
        }
        var words = new ArrayList<>(List.of(tool.resolve("bin/comparand").toString()));
        words.addAll(List.of(arguments));
        return asSomebody(words);
    }

    @Test
    @DisplayName("a folder that may not be written, and a record that may not be read, are named, and nothing changes")
    void permissions() throws Exception {
        var library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        var dossier = library.resolve("dossiers/example.yaml").toString();
        var reports = folder.resolve("reports");
        var first = CommandLineUse.run("build", dossier, "--for", "evidence", "--out", reports.toString());
        assertThat(first.code()).isZero();
        Files.setPosixFilePermissions(reports, PosixFilePermissions.fromString("r-xr-xr-x"));
        var before = FolderContent.of(reports);

        var unwritable = Tool.run(folder, readable("build", dossier, "--for", "evidence", "--out", reports.toString()));

        assertThat(unwritable.code()).as(unwritable.said()).isEqualTo(2);
        assertThat(unwritable.said())
                .contains("STOP output-unwritable", "may not be written", "an earlier output stands as it was")
                .doesNotContain("\tat ");
        assertThat(FolderContent.of(reports)).isEqualTo(before);

        Files.setPosixFilePermissions(
                library.resolve("sources/example-paper.yaml"), PosixFilePermissions.fromString("---------"));
        Files.setPosixFilePermissions(
                library.resolve("studies/example-bench"), PosixFilePermissions.fromString("---------"));
        var unreadable = Tool.run(folder, readable("build", dossier, "--for", "evidence", "--out", reports.toString()));
        Files.setPosixFilePermissions(
                library.resolve("studies/example-bench"), PosixFilePermissions.fromString("rwxr-xr-x"));
        Files.setPosixFilePermissions(reports, PosixFilePermissions.fromString("rwxr-xr-x"));

        assertThat(unreadable.code()).as(unreadable.said()).isEqualTo(2);
        assertThat(unreadable.said())
                .contains("sources/example-paper.yaml", "studies/example-bench", "Nothing was written.")
                .doesNotContain("\tat ");
        assertThat(FolderContent.of(reports)).isEqualTo(before);
    }
}
