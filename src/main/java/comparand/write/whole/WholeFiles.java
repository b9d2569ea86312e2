package comparand.write.whole;

import comparand.digest.Sha;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Several files below one folder, written all or none. Their contents are on the disk in a hidden folder, with a journal that
 * says where they belong, before the first file is touched. Who is stopped before the journal stands has done nothing; who is
 * stopped after it is followed by one who {@linkplain #settle goes on by it}.
 */
public final class WholeFiles {

    /** The hidden folder, which is there only while files are written. */
    public static final String FOLDER = ".unfinished-write";

    /** The content of a file. */
    @FunctionalInterface
    public interface Content {

        /** Writes it into a file that is not there yet. */
        void into(Path file) throws IOException;

        static Content of(String text) {
            return of(text.getBytes(StandardCharsets.UTF_8));
        }

        static Content of(byte[] bytes) {
            return file -> Files.write(file, bytes);
        }

        static Content copyOf(Path original) {
            return file -> Files.copy(original, file);
        }
    }

    /**
     * A file as it is to be.
     *
     * @param path within the folder, with slashes
     * @param before its text when it was read; empty if it was not there
     */
    public record Change(String path, Optional<String> before, Content content) {}

    /** What was found of a program that did not come to its end, and done about it. */
    public enum Settled {
        /** Nothing was found. */
        NOTHING,
        /** Files that were to be written are written now. */
        FINISHED,
        /** It had not begun; what it had made ready was taken away. */
        CLEARED
    }

    /** A file is not as it was read: somebody else has written it since. */
    public static final class ChangedMeanwhile extends IOException {
        private static final long serialVersionUID = 1;
        private final String path;

        ChangedMeanwhile(String path) {
            super(path + " was changed meanwhile");
            this.path = path;
        }

        /** Within the folder. */
        public String path() {
            return path;
        }
    }

    /** Another program is writing into the folder. */
    public static final class Busy extends IOException {
        private static final long serialVersionUID = 1;

        Busy(Path root) {
            super("another command is writing into " + root);
        }
    }

    private final Path root;
    private final Path work;

    private WholeFiles(Path root, PlaceLock lock) {
        this.root = root;
        this.work = lock.folder();
    }

    /**
     * Writes all, or throws and has written none.
     *
     * @throws ChangedMeanwhile if a file is not as it was read
     * @throws Busy if another program writes there
     */
    public static void write(Path root, List<Change> changes) throws IOException {
        Files.createDirectories(root);
        try (var lock = PlaceLock.take(root.resolve(FOLDER)).orElseThrow(() -> new Busy(root))) {
            var files = new WholeFiles(root, lock);
            files.settle();
            files.all(changes);
        }
    }

    /** Whether somebody writes below a folder, or wrote there and did not come to an end. */
    public static boolean isUnsettled(Path root) {
        return Files.isDirectory(root.resolve(FOLDER));
    }

    /**
     * Brings to its end what a program left that was stopped.
     *
     * @throws ChangedMeanwhile if somebody has changed a file since that was to be written
     * @throws Busy if the program is not stopped at all
     */
    public static Settled settle(Path root) throws IOException {
        if (!isUnsettled(root)) {
            return Settled.NOTHING;
        }
        try (var lock = PlaceLock.take(root.resolve(FOLDER)).orElseThrow(() -> new Busy(root))) {
            return new WholeFiles(root, lock).settle();
        }
    }

    private Settled settle() throws IOException {
        var journal = Journal.read(work);
        if (journal.isPresent()) {
            for (var line : journal.get().lines()) {
                put(line);
            }
        }
        return cleared() ? journal.isPresent() ? Settled.FINISHED : Settled.CLEARED : Settled.NOTHING;
    }

    private void all(List<Change> changes) throws IOException {
        var lines = new ArrayList<Journal.Line>();
        try {
            for (var change : changes) {
                lines.add(made(change, lines.size()));
            }
            for (var change : changes) {
                requireAsRead(change);
            }
            new Journal(lines).write(work);
        } catch (IOException | RuntimeException e) {
            cleared();
            throw e;
        }
        int begun = 0;
        try {
            for (var line : lines) {
                begun++;
                put(line);
            }
        } catch (IOException e) {
            // where even this fails, the journal stays, and the next to come brings it to its end
            undo(changes.subList(0, begun - 1), e);
            throw e;
        }
        cleared();
    }

    private Journal.Line made(Change change, int number) throws IOException {
        var made = work.resolve(Integer.toString(number));
        change.content().into(made);
        Forced.onDisk(made);
        return new Journal.Line(
                made.getFileName().toString(),
                Sha.of(made),
                change.before().map(t -> Sha.of(t.getBytes(StandardCharsets.UTF_8))),
                change.path());
    }

    private void requireAsRead(Change change) throws IOException {
        var file = root.resolve(change.path());
        boolean asRead = change.before().isPresent()
                ? Files.isRegularFile(file)
                        && Arrays.equals(
                                Files.readAllBytes(file), change.before().get().getBytes(StandardCharsets.UTF_8))
                : !Files.exists(file, LinkOption.NOFOLLOW_LINKS);
        if (!asRead) {
            throw new ChangedMeanwhile(change.path());
        }
    }

    /** A file that was put before is passed over, so that this may be done again at any time. */
    private void put(Journal.Line line) throws IOException {
        var file = root.resolve(line.path());
        var now = Files.exists(file, LinkOption.NOFOLLOW_LINKS) ? Optional.of(Sha.of(file)) : Optional.<String>empty();
        if (now.isPresent() && now.get().equals(line.after())) {
            return;
        }
        if (!now.equals(line.before())) {
            throw new ChangedMeanwhile(line.path());
        }
        var folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        // on the way, it lies beside the journal and not among the records; what is made ready stays until all is done
        var onTheWay = work.resolve(line.made() + ".on-the-way");
        Files.copy(work.resolve(line.made()), onTheWay, StandardCopyOption.REPLACE_EXISTING);
        Forced.onDisk(onTheWay);
        Files.move(onTheWay, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    private void undo(List<Change> begun, IOException because) {
        try {
            for (var change : begun) {
                var file = root.resolve(change.path());
                if (change.before().isPresent()) {
                    WholeFile.write(file, change.before().get());
                } else {
                    Files.deleteIfExists(file);
                }
            }
            cleared();
        } catch (IOException e) {
            because.addSuppressed(e);
        }
    }

    /** Whether there was anything; the journal goes first, for without it nothing else counts. */
    private boolean cleared() throws IOException {
        boolean any = Journal.delete(work);
        try (var entries = Files.list(work)) {
            for (var path : entries.filter(p -> !p.endsWith("lock")).toList()) {
                Files.delete(path);
                any = true;
            }
        }
        return any;
    }
}
