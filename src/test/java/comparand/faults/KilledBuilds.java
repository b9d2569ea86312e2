package comparand.faults;

import comparand.app.CommandLineUse;
import comparand.support.FolderContent;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;

/** Builds into one folder that are killed at random moments, and what stands there afterwards. */
final class KilledBuilds {

    /** What stood in the place of the folder when the process was gone. */
    enum Found {
        OLD,
        NEW,
        /** Nothing: killed between the two renames. */
        BETWEEN
    }

    /**
     * One kill.
     *
     * @param millis since the start of the process
     * @param inTime whether the process was still there to be killed
     * @param leftovers whether anything hidden was left beside the folder
     * @param then what stands there after the next command on the place
     */
    record Kill(long millis, boolean inTime, Found found, boolean leftovers, Found then, boolean saidSo) {}

    private static final String[] LANGUAGES = {"en", "de"};

    private final Path folder;
    private final Path library;
    private final Path out;
    private final FolderContent[] whole = new FolderContent[2];
    private final Random random;
    private int language;
    private long duration;

    KilledBuilds(Path folder, long seed) throws IOException {
        this.folder = folder;
        this.library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
        this.out = folder.resolve("reports/example");
        this.random = new Random(seed);
        for (int i : new int[] {1, 0}) {
            long start = System.nanoTime();
            var run = Tool.end(build(i));
            if (run.code() != 0) {
                throw new IllegalStateException(run.said());
            }
            duration = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
            whole[i] = FolderContent.of(out);
        }
    }

    private Process build(int inLanguage) throws IOException {
        return Tool.start(
                Tool.command(
                        "build",
                        library.resolve("dossiers/example.yaml").toString(),
                        "--for",
                        "evidence",
                        "--language",
                        LANGUAGES[inLanguage],
                        "--out",
                        folder.resolve("reports").toString()),
                folder);
    }

    /** A kill at any moment of the whole run. */
    Kill atAnyMoment() throws IOException, InterruptedException {
        var process = build(1 - language);
        long start = System.nanoTime();
        TimeUnit.MILLISECONDS.sleep(random.nextLong(duration + duration / 10));
        return killed(process, start);
    }

    /** A kill in the moments in which the folder is exchanged. */
    Kill atTheExchange() throws IOException, InterruptedException {
        var process = build(1 - language);
        long start = System.nanoTime();
        var last = folder.resolve("reports/.example.work/new/checksums.sha256");
        while (process.isAlive() && !Files.exists(last)) {
            Thread.onSpinWait();
        }
        long until = System.nanoTime() + random.nextLong(TimeUnit.MILLISECONDS.toNanos(12));
        while (System.nanoTime() < until) {
            Thread.onSpinWait();
        }
        return killed(process, start);
    }

    private Kill killed(Process process, long start) throws IOException, InterruptedException {
        boolean inTime = process.isAlive();
        process.destroyForcibly();
        inTime &= process.waitFor() != 0;
        long millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
        var found = found();
        boolean leftovers = Files.exists(folder.resolve("reports/.example.work"));
        var next = CommandLineUse.run("changes", out.toString(), out.toString());
        if (next.code() != 0 || Files.exists(folder.resolve("reports/.example.work"))) {
            throw new AssertionError("the next command did not settle it: " + next.err());
        }
        var then = found();
        if (then == Found.NEW) {
            language = 1 - language;
        }
        return new Kill(millis, inTime, found, leftovers, then, next.err().contains("output-settled"));
    }

    /** Every path and every byte is that of one of the two outputs, or the folder is not there. */
    private Found found() {
        if (!Files.exists(out)) {
            return Found.BETWEEN;
        }
        var content = FolderContent.of(out);
        if (content.equals(whole[language])) {
            return Found.OLD;
        }
        if (content.equals(whole[1 - language])) {
            return Found.NEW;
        }
        throw new AssertionError("between old and new: " + content);
    }
}
