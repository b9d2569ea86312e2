package comparand.write.whole;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;

/**
 * A folder that is replaced whole. The new one is filled in a hidden folder beside it, with a lock that keeps others out; then
 * the old one is moved in there, and the new one takes its place.
 *
 * <p>Between these two renames nothing stands in the place: no system that Java runs on lets it exchange two folders in one
 * step. Both lie whole beside it then, and whoever comes next {@linkplain #settle() puts the new one in its place}.
 */
public final class WholeFolder implements AutoCloseable {

    /** Whether all that belongs to a filled folder is in it. */
    @FunctionalInterface
    public interface Wholeness {
        boolean of(Path folder) throws IOException;
    }

    /** What was found of programs that did not come to their end, and done about it. */
    public enum Settled {
        /** Nothing was found. */
        NOTHING,
        /** A new folder that was whole; it was put in its place. */
        FINISHED,
        /** An old folder that was moved away for a new one that is not whole; it is back. */
        PUT_BACK,
        /** Leftovers beside a folder that stands in its place; they were taken away. */
        CLEARED
    }

    /** How a folder is renamed, so that tests can stop between two renames. */
    @FunctionalInterface
    interface Moving {
        void move(Path from, Path to) throws IOException;
    }

    private final Path folder;
    private final PlaceLock lock;
    private final Wholeness whole;
    private final Moving moving;

    private WholeFolder(Path folder, PlaceLock lock, Wholeness whole, Moving moving) {
        this.folder = folder;
        this.lock = lock;
        this.whole = whole;
        this.moving = moving;
    }

    /**
     * The place of a folder, for one's own until it is closed; empty if another program has it.
     *
     * @throws IOException if nothing can be written beside it
     */
    public static Optional<WholeFolder> take(Path folder, Wholeness whole) throws IOException {
        return take(folder, whole, (from, to) -> Files.move(from, to, StandardCopyOption.ATOMIC_MOVE));
    }

    static Optional<WholeFolder> take(Path folder, Wholeness whole, Moving moving) throws IOException {
        var work = work(folder);
        Files.createDirectories(work.toAbsolutePath().normalize().getParent());
        return PlaceLock.take(work).map(l -> new WholeFolder(folder, l, whole, moving));
    }

    /** Whether somebody works beside a folder, or worked there and did not come to an end. */
    public static boolean isUnsettled(Path folder) {
        return folder.getFileName() != null && Files.isDirectory(work(folder));
    }

    /** Where the new and the old folder lie meanwhile. */
    public static Path work(Path folder) {
        return folder.resolveSibling("." + folder.getFileName() + ".work");
    }

    /** Puts right what a program left that was stopped. To be called before anything else. */
    public Settled settle() throws IOException {
        if (!isThere(fresh()) && !isThere(old())) {
            return Settled.NOTHING;
        }
        var settled = isHalfway() ? placed() : Settled.CLEARED;
        clear();
        return settled;
    }

    private Settled placed() throws IOException {
        if (isThere(fresh()) && whole.of(fresh())) {
            moving.move(fresh(), folder);
            return Settled.FINISHED;
        }
        moving.move(old(), folder);
        return Settled.PUT_BACK;
    }

    /** An empty folder to be filled. */
    public Path begin() throws IOException {
        return Files.createDirectory(fresh());
    }

    /**
     * Puts the filled folder in the place of the old one.
     *
     * @throws IOException if it could not; the old one is in its place then, unless it {@link #isHalfway}
     */
    public void replace() throws IOException {
        if (!isThere(folder)) {
            moving.move(fresh(), folder);
            return;
        }
        moving.move(folder, old());
        try {
            moving.move(fresh(), folder);
        } catch (IOException e) {
            try {
                moving.move(old(), folder);
            } catch (IOException stays) {
                e.addSuppressed(stays);
            }
            throw e;
        }
    }

    /** Whether the old folder was moved away and nothing stands in its place. */
    public boolean isHalfway() {
        return isThere(old()) && !isThere(folder);
    }

    private Path fresh() {
        return lock.folder().resolve("new");
    }

    private Path old() {
        return lock.folder().resolve("old");
    }

    private static boolean isThere(Path path) {
        return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
    }

    private void clear() throws IOException {
        Deleting.all(fresh());
        Deleting.all(old());
    }

    /** Gives the place up. What cannot be taken away is left to the next, and does not undo what was done. */
    @Override
    public void close() {
        try (lock) {
            if (!isHalfway()) {
                clear();
            }
        } catch (IOException left) {
            // whoever comes next settles it
        }
    }
}
