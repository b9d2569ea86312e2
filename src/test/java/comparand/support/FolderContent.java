package comparand.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.SortedMap;
import java.util.TreeMap;

/** What lies below a folder: every path, with a fingerprint of each file; equal if nothing was touched. */
public record FolderContent(SortedMap<String, String> entries) {

    public static FolderContent of(Path folder) {
        var entries = new TreeMap<String, String>();
        try (var paths = Files.walk(folder)) {
            for (var path : paths.toList()) {
                entries.put(folder.relativize(path).toString(), fingerprint(path));
            }
            return new FolderContent(entries);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String fingerprint(Path path) throws IOException {
        if (Files.isSymbolicLink(path)) {
            return "link to " + Files.readSymbolicLink(path);
        }
        if (Files.isDirectory(path)) {
            return "folder";
        }
        try {
            var sha = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(sha.digest(Files.readAllBytes(path)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
