package comparand.faults;

import comparand.app.CommandLineUse;
import comparand.support.FolderContent;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;

/** Commands that write several files of a library, killed while they write, and what the library holds afterwards. */
final class KilledRecords {

    private static final Path REFERENCES =
            Path.of("evidence/references/pubmed-export.nbib").toAbsolutePath();

    /** What was found once the next command was done. */
    record Kill(boolean inTime, boolean cutOff, boolean isNew) {}

    private final Path folder;
    private final Random random;
    private int turn;

    KilledRecords(Path folder, long seed) {
        this.folder = folder;
        this.random = new Random(seed);
    }

    /** {@code start}: a new library, or none. */
    Kill start() throws IOException, InterruptedException {
        var library = folder.resolve("started-" + turn++);
        var whole = folder.resolve("started-whole");
        if (!Files.exists(whole)) {
            CommandLineUse.run("start", whole.toString());
        }
        Files.createDirectory(library);
        var nothing = FolderContent.of(library);
        return killed(Tool.command("start", library.toString()), library, nothing, FolderContent.of(whole));
    }

    /** {@code references import --write}: all sources of a file, or none. */
    Kill references() throws IOException, InterruptedException {
        var whole = folder.resolve("imported-whole");
        if (!Files.exists(whole)) {
            LibraryCopy.of(Path.of("templates/blank"), whole);
            var run = Tool.run(folder, imported(whole));
            if (run.code() != 0) {
                throw new IllegalStateException(run.said());
            }
        }
        var library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("imported-" + turn++));
        return killed(imported(library), library, FolderContent.of(library), FolderContent.of(whole));
    }

    private static List<String> imported(Path library) {
        return Tool.command("references", "import", REFERENCES.toString(), "--write", "--library", library.toString());
    }

    private Kill killed(List<String> command, Path library, FolderContent before, FolderContent after)
            throws IOException, InterruptedException {
        var process = Tool.start(command, folder);
        var work = library.resolve(".unfinished-write");
        while (process.isAlive() && !Files.exists(work)) {
            Thread.onSpinWait();
        }
        TimeUnit.MICROSECONDS.sleep(random.nextInt(120_000));
        boolean inTime = process.isAlive();
        process.destroyForcibly();
        inTime &= process.waitFor() != 0;
        boolean cutOff = Files.exists(work);
        CommandLineUse.run("check", library.toString());
        var now = FolderContent.of(library);
        if (!now.equals(before) && !now.equals(after)) {
            throw new AssertionError("between old and new: " + now);
        }
        return new Kill(inTime, cutOff, now.equals(after));
    }
}
