package comparand.support;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A copy of a library that a test may change. */
public final class LibraryCopy {

    private LibraryCopy() {}

    /** Copies a folder with everything in it; returns the copy. */
    public static Path of(Path library, Path target) throws IOException {
        try (var files = Files.walk(library)) {
            for (var file : files.toList()) {
                var copy = target.resolve(library.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(file, copy);
                }
            }
        }
        return target;
    }

    /** Replaces a text that must occur in a file of a copy. */
    public static void edit(Path file, String old, String by) throws IOException {
        var text = Files.readString(file);
        if (!text.contains(old)) {
            throw new IllegalArgumentException(file + " does not contain: " + old);
        }
        Files.writeString(file, text.replace(old, by));
    }
}
