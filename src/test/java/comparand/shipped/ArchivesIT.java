package comparand.shipped;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.LibraryCopy;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The archives and the one jar, unpacked in a strange place and run with a Java runtime that was made of nothing but the
 * modules the tool needs, in an environment of nothing but a path: what comes out is what the tool writes here.
 */
class ArchivesIT {

    /** What {@code jdeps --print-module-deps} finds in the one jar, with all libraries. */
    private static final String MODULES =
            "java.base,java.desktop,java.scripting,java.security.jgss,java.sql,java.xml.crypto";

    private static final List<String> TOOLS_OF_THE_LAUNCHER = List.of("sh", "sed", "dirname", "readlink", "head");
    private static final String DOSSIER = "evidence/dossiers/small-oxygenators.yaml";

    /** 1 December 2026, as seconds. */
    private static final Map<String, String> ON_ONE_DAY = Map.of("SOURCE_DATE_EPOCH", "1796083200");

    @TempDir
    static Path shared;

    private static Path runtime = Path.of("");
    private static Path path = Path.of("");
    private static Map<String, byte[]> here = Map.of();

    @TempDir
    Path folder;

    @BeforeAll
    static void aRuntimeAndWhatIsWrittenHere() throws Exception {
        runtime = shared.resolve("runtime");
        int made = ToolProvider.findFirst("jlink")
                .orElseThrow()
                .run(System.out, System.err, "--add-modules", MODULES, "--strip-debug", "--output", runtime.toString());
        assertThat(made).isZero();
        path = Files.createDirectory(shared.resolve("path"));
        for (var tool : TOOLS_OF_THE_LAUNCHER) {
            Files.createSymbolicLink(path.resolve(tool), onPath(tool));
        }
        Files.createSymbolicLink(path.resolve("java"), runtime.resolve("bin/java"));
        var environment = new TreeMap<>(ON_ONE_DAY);
        environment.put("PATH", System.getenv("PATH"));
        environment.put("JAVA_HOME", System.getProperty("java.home"));
        here = built(
                shared,
                environment,
                List.of(Shipment.APP.resolve("bin/comparand").toString()),
                Path.of(DOSSIER));
        assertThat(here).hasSizeGreaterThan(20);
    }

    @Test
    void bothArchivesHoldTheSameFilesWithTheSameRights() throws IOException {
        var zip = Shipment.zip();
        var tar = Shipment.tar();

        assertThat(zip.keySet()).containsExactlyElementsOf(tar.keySet());
        zip.forEach((name, file) -> {
            var other = requireNonNull(tar.get(name));
            assertThat(file.bytes()).as(name).isEqualTo(other.bytes());
            assertThat(file.mode()).as(name).isEqualTo(name.endsWith("/bin/comparand") ? 0755 : 0644);
            assertThat(other.mode()).as(name).isEqualTo(file.mode());
        });
        var top = "comparand-" + Shipment.VERSION + "/";
        assertThat(zip.keySet())
                .allMatch(n -> n.startsWith(top))
                .noneMatch(n -> n.endsWith(".jsa"))
                .contains(top + "README.md", top + "LICENSE", top + "CHANGELOG.md", top + "THIRD-PARTY.txt")
                .contains(top + "bin/comparand.bat", top + "sbom/comparand.cdx.json", top + "sbom/comparand.cdx.xml")
                .containsAll(below(Path.of("evidence")).map(n -> top + n).toList())
                .containsAll(below(Shipment.APP)
                        .map(n -> top + Shipment.APP.relativize(Path.of(n)))
                        .filter(n -> !n.endsWith(".jsa"))
                        .toList());
    }

    @Test
    void theArchiveRunsWhereThereIsOnlyARuntime() throws Exception {
        var strange = Files.createDirectory(folder.resolve("Prüf stand ß"));
        var app = Shipment.unpack(Shipment.tar(), strange);

        var outputs = built(
                strange,
                withDay(Map.of("PATH", path.toString())),
                List.of(app.resolve("bin/comparand").toString()),
                app.resolve(DOSSIER));

        sameAsHere(outputs);
    }

    @Test
    void theOneJarRunsAlone() throws Exception {
        var strange = Files.createDirectory(folder.resolve("Prüf stand ß"));
        LibraryCopy.of(Path.of("evidence"), strange.resolve("evidence"));
        var jar = Files.copy(Shipment.ONE_JAR, strange.resolve("comparand.jar"));

        // without a launcher, Java must be told that names of files are UTF-8
        var outputs = built(
                strange,
                withDay(Map.of("LC_ALL", "C.UTF-8")),
                List.of(runtime.resolve("bin/java").toString(), "-jar", jar.toString()),
                strange.resolve(DOSSIER));

        sameAsHere(outputs);
    }

    private static Map<String, String> withDay(Map<String, String> environment) {
        var all = new TreeMap<>(ON_ONE_DAY);
        all.putAll(environment);
        return all;
    }

    private static void sameAsHere(Map<String, byte[]> outputs) {
        assertThat(outputs.keySet()).isEqualTo(here.keySet());
        here.forEach((name, bytes) -> assertThat(outputs.get(name)).as(name).isEqualTo(bytes));
    }

    /** What a build writes, by name. */
    private static Map<String, byte[]> built(
            Path folder, Map<String, String> environment, List<String> program, Path dossier)
            throws IOException, InterruptedException {
        var out = folder.resolve("Bericht für alle");
        var command = Stream.concat(
                        program.stream(),
                        Stream.of("build", dossier.toAbsolutePath().toString(), "--out", out.toString()))
                .toList();
        var started = Started.run(folder, environment, command);
        assertThat(started.code()).as(started.said()).isZero();
        var written = new TreeMap<String, byte[]>();
        try (Stream<Path> files = Files.walk(out)) {
            // the list of what may be taken over next time, hidden beside the output, is of this very program
            for (var file : files.filter(
                            f -> Files.isRegularFile(f) && !f.toFile().isHidden())
                    .toList()) {
                written.put(out.relativize(file).toString(), Files.readAllBytes(file));
            }
        }
        return written;
    }

    private static Stream<String> below(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).map(Path::toString).toList().stream();
        }
    }

    private static Path onPath(String tool) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .map(p -> Path.of(p, tool))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow();
    }
}
