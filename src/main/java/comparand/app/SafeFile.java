package comparand.app;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes a file whole or not at all: the new content is on the disk under another name before it takes the place of the old
 * in one step. Whoever reads the file, or finds it after the machine stopped, sees the old text or the new one.
 */
final class SafeFile {

    private SafeFile() {}

    static void write(Path file, String text) throws IOException {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    static void write(Path file, byte[] content) throws IOException {
        var target = file.toAbsolutePath();
        var folder = target.getParent();
        if (folder == null) {
            throw new IOException(file + " has no folder above it");
        }
        Files.createDirectories(folder);
        // hidden, so that a library does not take it for a record if it is left behind
        var fresh = folder.resolve(
                "." + target.getFileName() + ".new-" + ProcessHandle.current().pid());
        try {
            try (var channel = FileChannel.open(
                    fresh, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
                var bytes = ByteBuffer.wrap(content);
                while (bytes.hasRemaining()) {
                    channel.write(bytes);
                }
                channel.force(true);
            }
            Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }
}
