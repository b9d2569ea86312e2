package comparand.shipped;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.compressors.gzip.GzipCompressorInputStream;

/** What packaging made, and the archives' entries with the rights they ask for. */
final class Shipment {

    static final Path APP = Path.of("target/comparand").toAbsolutePath();
    static final String VERSION = version();
    static final Path ZIP = made(".zip");
    static final Path TAR = made(".tar.gz");
    static final Path ONE_JAR = made("-all.jar");

    private Shipment() {}

    /** A file of an archive: its bytes, and its rights as Unix writes them. */
    static final class Packed {

        private final byte[] bytes;
        private final int mode;

        Packed(byte[] bytes, int mode) {
            this.bytes = bytes;
            this.mode = mode;
        }

        byte[] bytes() {
            return bytes;
        }

        int mode() {
            return mode;
        }

        boolean isExecutable() {
            return (mode & 0111) != 0;
        }
    }

    private static Path made(String ending) {
        return Path.of("target", "comparand-" + VERSION + ending).toAbsolutePath();
    }

    private static String version() {
        var properties = new Properties();
        try (var in = requireNonNull(Shipment.class.getResourceAsStream("/comparand/version.properties"))) {
            properties.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return properties.getProperty("version");
    }

    static SortedMap<String, Packed> zip() throws IOException {
        var files = new TreeMap<String, Packed>();
        try (var zip = ZipFile.builder().setPath(ZIP).get()) {
            for (var entries = zip.getEntries(); entries.hasMoreElements(); ) {
                var entry = entries.nextElement();
                if (!entry.isDirectory()) {
                    var bytes = zip.getInputStream(entry).readAllBytes();
                    files.put(entry.getName(), new Packed(bytes, entry.getUnixMode() & 0777));
                }
            }
        }
        return files;
    }

    static SortedMap<String, Packed> tar() throws IOException {
        var files = new TreeMap<String, Packed>();
        try (var tar = new TarArchiveInputStream(new GzipCompressorInputStream(Files.newInputStream(TAR)))) {
            for (var entry = tar.getNextEntry(); entry != null; entry = tar.getNextEntry()) {
                if (entry.isFile()) {
                    files.put(entry.getName(), new Packed(tar.readAllBytes(), entry.getMode() & 0777));
                }
            }
        }
        return files;
    }

    /** Lays an archive's files into a folder, with their rights; gives the one folder they lie in. */
    static Path unpack(SortedMap<String, Packed> files, Path folder) throws IOException {
        for (var file : files.entrySet()) {
            var place = folder.resolve(file.getKey());
            Files.createDirectories(requireNonNull(place.getParent()));
            Files.write(place, file.getValue().bytes());
            if (file.getValue().isExecutable() && !place.toFile().setExecutable(true)) {
                throw new IOException("cannot be made executable: " + place);
            }
        }
        return folder.resolve("comparand-" + VERSION);
    }
}
