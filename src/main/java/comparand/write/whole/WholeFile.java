package comparand.write.whole;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Writes a file whole or not at all: the new content is on the disk under another name before it takes the place of the old
 * in one step. Whoever reads the file, or finds it after the machine stopped, sees the old text or the new one.
 *
 * <p>What a program that was killed left under the other name is taken away by the next that writes the same file. A living
 * program is known by the lock it holds on it: the number of a process may be another's by now, or be of another machine.
 */
public final class WholeFile {

    private static final int TRIES = 100;

    private WholeFile() {}

    public static void write(Path file, String text) throws IOException {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    public static void write(Path file, byte[] content) throws IOException {
        var target = file.toAbsolutePath();
        var folder = target.getParent();
        if (folder == null) {
            throw new IOException(file + " has no folder above it");
        }
        Files.createDirectories(folder);
        // hidden, so that a library does not take it for a record if it is left behind
        var names = "." + target.getFileName() + ".new-";
        clear(folder, names);
        var own = names + ProcessHandle.current().pid() + "-";
        for (int i = 0; i < TRIES; i++) {
            if (isWritten(target, folder.resolve(own + i), content)) {
                return;
            }
        }
        throw new IOException(file + " is being written by another program");
    }

    /** False where the other name was taken, or taken away, by another. */
    private static boolean isWritten(Path target, Path fresh, byte[] content) throws IOException {
        try (var channel = FileChannel.open(fresh, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            try {
                if (isHeldByAnother(channel)) {
                    return false;
                }
                var bytes = ByteBuffer.wrap(content);
                while (bytes.hasRemaining()) {
                    channel.write(bytes);
                }
                channel.force(true);
                Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
                return true;
            } finally {
                Files.deleteIfExists(fresh);
            }
        } catch (FileAlreadyExistsException e) {
            if (fresh.toString().equals(e.getFile())) {
                return false;
            }
            throw e;
        }
    }

    private static boolean isHeldByAnother(FileChannel channel) {
        try {
            return channel.tryLock() == null;
        } catch (IOException e) {
            // a file system without locks: nobody takes leftovers away there either
            return false;
        }
    }

    private static void clear(Path folder, String names) throws IOException {
        List<Path> left;
        try (var entries = Files.list(folder)) {
            left = entries.filter(p -> String.valueOf(p.getFileName()).startsWith(names))
                    .toList();
        }
        for (var path : left) {
            try (var channel = FileChannel.open(path, StandardOpenOption.WRITE);
                    @Nullable FileLock lock = channel.tryLock()) {
                if (lock != null) {
                    Files.deleteIfExists(path);
                }
            } catch (IOException | OverlappingFileLockException e) {
                // it is gone by now, or belongs to somebody: nothing of ours depends on it
            }
        }
    }
}
