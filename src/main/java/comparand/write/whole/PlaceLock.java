package comparand.write.whole;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A hidden folder to work in that one living program has to itself. The system gives its lock up when the program ends, however
 * it ends; the folder that is left then is free for the next.
 *
 * <p>The folder goes when its owner is done. Who opened the lock before that, and is given it after, holds a file that is in
 * no folder any more: its size, which the file in the folder does not follow, tells.
 */
final class PlaceLock implements AutoCloseable {

    private static final String LOCK = "lock";
    private static final int TRIES = 100;

    /** Within one program the system tells nobody apart. */
    private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

    private final Path folder;
    private final FileChannel channel;

    private PlaceLock(Path folder, FileChannel channel) {
        this.folder = folder;
        this.channel = channel;
    }

    /**
     * The folder, made if it is not there; empty if another has it.
     *
     * @throws IOException if it cannot be made, or its file system knows no locks
     */
    static Optional<PlaceLock> take(Path folder) throws IOException {
        var absolute = folder.toAbsolutePath().normalize();
        if (!HELD.add(absolute)) {
            return Optional.empty();
        }
        Optional<PlaceLock> taken = Optional.empty();
        try {
            for (int i = 0; i < TRIES; i++) {
                make(absolute);
                try {
                    taken = tried(absolute);
                    return taken;
                } catch (NoSuchFileException gone) {
                    // its owner was done in this moment: once more
                }
            }
            return taken;
        } finally {
            if (taken.isEmpty()) {
                HELD.remove(absolute);
            }
        }
    }

    private static void make(Path folder) throws IOException {
        try {
            Files.createDirectory(folder);
        } catch (FileAlreadyExistsException e) {
            if (!Files.isDirectory(folder) && Files.exists(folder)) {
                throw e;
            }
        }
    }

    private static Optional<PlaceLock> tried(Path folder) throws IOException {
        var file = folder.resolve(LOCK);
        var channel =
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
        boolean kept = false;
        try {
            if (channel.tryLock() == null) {
                return Optional.empty();
            }
            if (!isAt(file, channel)) {
                throw new NoSuchFileException(file.toString());
            }
            kept = true;
            return Optional.of(new PlaceLock(folder, channel));
        } catch (OverlappingFileLockException e) {
            return Optional.empty();
        } finally {
            if (!kept) {
                channel.close();
            }
        }
    }

    /**
     * Whether a path leads to an open file: whatever size the one is given, the other has. The file must not be opened a second
     * time to find out, because where locks belong to processes, closing it would give the lock up.
     */
    private static boolean isAt(Path file, FileChannel channel) throws IOException {
        var sizes = ByteBuffer.allocate(Long.BYTES)
                .putLong(0, UUID.randomUUID().getLeastSignificantBits())
                .array();
        for (byte wanted : sizes) {
            int size = Byte.toUnsignedInt(wanted);
            channel.truncate(0);
            channel.write(ByteBuffer.allocate(size), 0);
            if (Files.size(file) != size) {
                return false;
            }
        }
        return true;
    }

    Path folder() {
        return folder;
    }

    /** Gives the folder up; with nothing else in it, it goes. */
    @Override
    public void close() throws IOException {
        try (channel) {
            Files.deleteIfExists(folder.resolve(LOCK));
            Files.deleteIfExists(folder);
        } catch (DirectoryNotEmptyException e) {
            // something was left for the next, or the next is there already
        } finally {
            HELD.remove(folder);
        }
    }
}
