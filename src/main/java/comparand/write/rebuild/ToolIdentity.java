package comparand.write.rebuild;

import comparand.digest.Sha;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.zip.Deflater;

/**
 * What makes a file beside what it is made from: the code of the program, the libraries it uses, the Java it runs on. Where one
 * of them is another, bytes may be others.
 */
public final class ToolIdentity {

    private ToolIdentity() {}

    /**
     * As a text; empty where it cannot be told, and nothing may be taken over.
     *
     * @param main a class of the program
     */
    public static Optional<String> of(Class<?> main) {
        try {
            var source = main.getProtectionDomain().getCodeSource();
            if (source == null) {
                return Optional.empty();
            }
            var text = new StringBuilder();
            for (var property : new String[] {"java.runtime.version", "java.vendor", "os.name", "os.arch"}) {
                text.append(System.getProperty(property, "")).append('\n');
            }
            text.append(compression()).append('\n');
            code(Path.of(URI.create(String.valueOf(source.getLocation()))), text);
            libraries(text);
            return Optional.of(Sha.of(text.toString().getBytes(StandardCharsets.UTF_8)));
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    /** Systems bring a compressing library of their own, whose version no property tells: a sample of its work. */
    private static String compression() {
        var sample = new byte[1 << 14];
        for (int i = 0; i < sample.length; i++) {
            sample[i] = (byte) (i * i % 251 + i / 64);
        }
        var deflater = new Deflater();
        try {
            deflater.setInput(sample);
            deflater.finish();
            var packed = new byte[sample.length * 2];
            int n = deflater.deflate(packed);
            return Sha.of(Arrays.copyOf(packed, n));
        } finally {
            deflater.end();
        }
    }

    private static void code(Path place, StringBuilder text) throws IOException {
        if (Files.isRegularFile(place)) {
            text.append(Sha.of(place)).append('\n');
            return;
        }
        try (var files = Files.walk(place)) {
            for (var file : files.filter(Files::isRegularFile).sorted().toList()) {
                text.append(place.relativize(file))
                        .append(' ')
                        .append(Sha.of(file))
                        .append('\n');
            }
        }
    }

    /** Libraries lie as they were delivered, under names with their versions: name, size and time tell them apart. */
    private static void libraries(StringBuilder text) throws IOException {
        for (var entry : System.getProperty("java.class.path", "").split(File.pathSeparator, -1)) {
            var place = Path.of(entry);
            var beside = place.toAbsolutePath().getParent();
            if (Files.isRegularFile(place) && beside != null) {
                library(place, text);
                // a jar may name others beside it
                try (var jars = Files.list(beside)) {
                    for (var jar : jars.filter(p -> p.toString().endsWith(".jar"))
                            .sorted()
                            .toList()) {
                        library(jar, text);
                    }
                }
            }
        }
    }

    private static void library(Path jar, StringBuilder text) throws IOException {
        text.append(jar.getFileName())
                .append(' ')
                .append(Files.size(jar))
                .append(' ')
                .append(Files.getLastModifiedTime(jar).toMillis())
                .append('\n');
    }
}
