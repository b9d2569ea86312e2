package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import comparand.app.CommandLineUse;
import comparand.support.Built;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The same inputs give the same bytes: on another machine, in another folder, in another language, on another day. */
class SameBytesTest {

    private static final int OUTPUTS = 6;

    @TempDir
    Path temporary;

    @ParameterizedTest
    @ValueSource(strings = {Libraries.DEMO, Libraries.FILTERS})
    @DisplayName("a library copied elsewhere in another order, built by another process, gives the same files")
    void anotherProcessAnotherPlace(String dossier) throws Exception {
        var copy = copiedBackwards(dossier);
        var out = temporary.resolve("out of the way");

        byAnotherProcess(copy, out, "tr", "TR", "Pacific/Chatham");

        assertThat(fingerprints(out.resolve(name(dossier))))
                .isEqualTo(fingerprints(Built.of(dossier).folder()));
    }

    @ParameterizedTest
    @CsvSource({"ar, EG, Africa/Cairo", "fa, IR, Asia/Tehran", "de, CH, America/St_Johns"})
    @DisplayName("the language, the digits and the hour of the machine leave no trace in the outputs")
    void anotherLanguage(String language, String country, String zone) throws Exception {
        byAnotherProcess(Path.of(Libraries.DEMO).toAbsolutePath(), temporary, language, country, zone);

        assertThat(fingerprints(temporary.resolve(name(Libraries.DEMO))))
                .isEqualTo(fingerprints(Built.demo().folder()));
    }

    @ParameterizedTest
    @ValueSource(strings = {Libraries.DEMO, Libraries.FILTERS})
    @DisplayName("one changed digit in a record changes the fingerprint and every output but the schema")
    void anotherInputOtherBytes(String dossier) throws IOException {
        var copy = copiedBackwards(dossier);
        var text = Files.readString(copy);
        assertThat(text).contains("prepared-by: ");
        Files.writeString(copy, text.replace("prepared-by: ", "prepared-by: The "));

        assertThat(built(copy.toString())).isZero();
        var changed = fingerprints(temporary.resolve(name(dossier)));
        var before = fingerprints(Built.of(dossier).folder());
        assertThat(changed.keySet()).isEqualTo(before.keySet());
        assertThat(changed).containsEntry("results.schema.json", before.getOrDefault("results.schema.json", ""));
        before.remove("results.schema.json");
        before.forEach((file, print) -> assertThat(changed).doesNotContain(entry(file, print)));
    }

    /** Builds in a process of its own, as a machine of another country would. */
    private void byAnotherProcess(Path dossier, Path out, String language, String country, String zone)
            throws IOException, InterruptedException {
        var log = temporary.resolve("log.txt");
        var process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Duser.language=" + language,
                        "-Duser.country=" + country,
                        "-Duser.timezone=" + zone,
                        "-Dfile.encoding=ISO-8859-1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "comparand.app.Main",
                        "build",
                        dossier.toString(),
                        "--out",
                        out.toString())
                .directory(temporary.toFile())
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        assertThat(process.waitFor()).as(Files.readString(log)).isZero();
    }

    private int built(String dossier) {
        var run = CommandLineUse.run("build", dossier, "--out", temporary.toString());
        return run.code();
    }

    /** The dossier of a copy whose files were made in reverse order, and look older than they are. */
    private Path copiedBackwards(String dossier) throws IOException {
        var original = Path.of(dossier).toAbsolutePath();
        var library = original.resolve("../..").normalize();
        var copy = temporary.resolve("a copy of the library");
        List<Path> files;
        try (var all = Files.walk(library)) {
            files = all.filter(Files::isRegularFile)
                    .sorted(Comparator.reverseOrder())
                    .toList();
        }
        for (var file : files) {
            var target = copy.resolve(library.relativize(file));
            Files.createDirectories(target.resolveSibling("."));
            Files.copy(file, target);
            Files.setLastModifiedTime(target, FileTime.from(Instant.EPOCH));
        }
        return copy.resolve(library.relativize(original));
    }

    private static String name(String dossier) {
        return Path.of(dossier).toFile().getName().replace(".yaml", "");
    }

    private static Map<String, String> fingerprints(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            var prints = new TreeMap<String, String>();
            files.filter(Files::isRegularFile)
                    .forEach(f -> prints.put(folder.relativize(f).toString(), fingerprint(f)));
            assertThat(prints).hasSizeGreaterThanOrEqualTo(OUTPUTS);
            assertThat(prints.keySet()).anyMatch(f -> f.startsWith("figures"));
            return prints;
        }
    }

    private static String fingerprint(Path file) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
