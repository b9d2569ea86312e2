package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The packaged tool, started as a user starts it. */
class LauncherIT {

    private static final Path LAUNCHER =
            Path.of("target/comparand/bin/comparand").toAbsolutePath();
    private static final Path DEMO =
            Path.of("evidence/dossiers/small-oxygenators.yaml").toAbsolutePath();

    @TempDir
    Path folder;

    @Test
    void runsFromAnyFolderAndThroughLinksToLinks() throws Exception {
        var first = Files.createSymbolicLink(folder.resolve("first"), LAUNCHER);
        var inner = Files.createDirectory(folder.resolve("a folder"));
        var second = Files.createSymbolicLink(inner.resolve("second"), Path.of("..", "first"));

        assertThat(run(first, Map.of(), "--version").said()).startsWith("Comparand ");
        assertThat(run(second, Map.of(), "--version").said()).startsWith("Comparand ");
    }

    @Test
    void startsWithTheClassDataRecordedWhenItWasPackaged() throws Exception {
        var run = run(LAUNCHER, Map.of("COMPARAND_JAVA_OPTIONS", "-Xlog:class+load"), "--version");

        assertThat(run.said()).contains("comparand.app.Main source: shared objects file (top)");
    }

    @Test
    void writesTheSameBytesInTwoProcesses() throws Exception {
        var one = run(LAUNCHER, Map.of(), "build", DEMO.toString(), "--out", "one");
        var two = run(LAUNCHER, Map.of("LC_ALL", "C", "TZ", "Asia/Tokyo"), "build", DEMO.toString(), "--out", "two");

        assertThat(one.code()).as(one.said()).isZero();
        assertThat(two.code()).as(two.said()).isZero();
        var first = folder.resolve("one/small-oxygenators");
        try (Stream<Path> outputs = Files.walk(first)) {
            var files = outputs.filter(Files::isRegularFile).toList();
            assertThat(files).hasSizeGreaterThanOrEqualTo(4);
            for (var file : files) {
                assertThat(folder.resolve("two/small-oxygenators").resolve(first.relativize(file)))
                        .hasSameBinaryContentAs(file);
            }
        }
    }

    @Test
    void handsOnTheExitCode() throws Exception {
        assertThat(run(LAUNCHER, Map.of(), "build", "nowhere.yaml").code()).isEqualTo(Exit.STOPPED);
        assertThat(run(LAUNCHER, Map.of(), "bild").code()).isEqualTo(Exit.USAGE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.8.0_392", "11.0.21", "16"})
    void saysWhichJavaItNeeds(String version) throws Exception {
        var run = run(LAUNCHER, Map.of("JAVA_HOME", java(version)), "--version");

        assertThat(run.code()).isEqualTo(69);
        assertThat(run.said()).contains("needs Java 17 or later").doesNotContain("started");
    }

    @Test
    void aLibraryWithALargeDataFileIsGivenTheCompilerForLongRuns() throws Exception {
        var library = folder.resolve("a library");
        var dossier = Files.createFile(
                Files.createDirectories(library.resolve("dossiers")).resolve("one.yaml"));
        var java = Map.of("JAVA_HOME", java("17.0.15"));
        var data = Files.createDirectories(library.resolve("studies/bench")).resolve("runs.csv");

        sparse(data, 20_000_000);
        assertThat(run(LAUNCHER, java, "check", library.toString()).said()).contains("-XX:TieredStopAtLevel=1 ");

        sparse(data, 30_000_000);
        assertThat(run(LAUNCHER, java, "check", library.toString()).said()).contains("-XX:TieredStopAtLevel=4 ");
        assertThat(run(LAUNCHER, java, "build", dossier.toString(), "--anew").said())
                .contains("-XX:TieredStopAtLevel=4 ");
        assertThat(run(LAUNCHER, java, "--version").said()).contains("-XX:TieredStopAtLevel=1 ");
    }

    private static void sparse(Path file, long length) throws IOException {
        try (var data = new RandomAccessFile(file.toFile(), "rw")) {
            data.setLength(length);
        }
    }

    /** The home of what passes for a Java: it says what it was started with. */
    private String java(String version) throws IOException {
        var home = folder.resolve("java " + version);
        var java = Files.writeString(
                Files.createDirectories(home.resolve("bin")).resolve("java"), "#!/bin/sh\necho started \"$@\"\n");
        assertThat(java.toFile().setExecutable(true)).isTrue();
        Files.writeString(home.resolve("release"), "IMPLEMENTOR=\"x\"\nJAVA_VERSION=\"" + version + "\"\n");
        return home.toString();
    }

    private record Run(int code, String said) {}

    private Run run(Path launcher, Map<String, String> environment, String... arguments)
            throws IOException, InterruptedException {
        var command = Stream.concat(Stream.of(launcher.toString()), Stream.of(arguments))
                .toList();
        var said = folder.resolve("said.txt");
        var builder = new ProcessBuilder(List.copyOf(command))
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile());
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().putAll(environment);
        var process = builder.start();
        assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
        return new Run(process.exitValue(), Files.readString(said, StandardCharsets.UTF_8));
    }
}
