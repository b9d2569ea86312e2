package comparand.faults;

import comparand.support.FolderContent;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Builds on a disk that is full at some point. */
final class SmallDisk {

    private final Path folder;
    private final Path library;

    SmallDisk(Path folder) throws IOException {
        this.folder = folder;
        this.library = LibraryCopy.of(Path.of("templates/blank"), folder.resolve("library"));
    }

    /** What a build said, and whether what it said is so. */
    record Build(Tool.Run run, boolean isWritten) {}

    private String build(String language) {
        return "'%s' build '%s' --for evidence --language %s --anew --out '%s'"
                .formatted(
                        Tool.LAUNCHER, library.resolve("dossiers/example.yaml"), language, folder.resolve("reports"));
    }

    /** The earlier output. */
    void first() throws IOException {
        var run = Tool.run(folder, List.of("sh", "-c", build("en")));
        if (run.code() != 0) {
            throw new IllegalStateException(run.said());
        }
    }

    /**
     * A build in which no file may be larger than so many blocks of 512 bytes: the system refuses what goes beyond.
     *
     * @return whether it was written; that nothing is changed or left where it was not, is made sure of
     */
    Build withFilesUpTo(int blocks) throws IOException {
        return judged("ulimit -f " + blocks + "; exec " + build("de"), folder.resolve("reports"));
    }

    /** Holds what was said against what is on the disk. */
    private Build judged(String script, Path reports) throws IOException {
        var before = FolderContent.of(reports);
        var run = Tool.run(folder, List.of("sh", "-c", script));
        boolean isWritten = run.code() == 0;
        if (!isWritten) {
            var now = FolderContent.of(reports);
            if (!now.equals(before)) {
                throw new AssertionError("not as it was: " + run.said());
            }
            if (run.code() != 2
                    || !run.said().contains("STOP output-unwritable")
                    || !run.said().contains("an earlier output stands as it was")
                    || !run.said().contains("Nothing was written.")
                    || run.said().contains("\tat ")) {
                throw new AssertionError("exit %d: %s".formatted(run.code(), run.said()));
            }
        }
        return new Build(run, isWritten);
    }

    /** The same on a real file system, mounted for one process, of so many per cent of the size of the earlier output. */
    Build onADiskOf(int percent) throws IOException {
        var disk = Files.createDirectories(folder.resolve("disk"));
        var reports = folder.resolve("reports");
        var report = folder.resolve("report.txt");
        var script = """
                size=$(( $(du -sk '%s/example' | cut -f1) * %d / 100 ))
                mount -t tmpfs -o size=${size}k none '%s' || exit 99
                cp -r '%s/example' '%s/example' || exit 98
                %s > '%s' 2>&1; code=$?
                diff -r '%s/example' '%s/example' > /dev/null; same=$?
                left=$(ls -A '%s' | grep -cv '^[.]*example\\(.built-from\\)*$')
                echo "code $code same $same left $left"
                """.formatted(
                        reports,
                        percent,
                        disk,
                        reports,
                        disk,
                        build("de").replace(reports.toString(), disk.toString()),
                        report,
                        reports,
                        disk,
                        disk);
        var run = Tool.run(folder, List.of("unshare", "-rm", "sh", "-c", script));
        var said = run.said() + (Files.exists(report) ? Files.readString(report) : "");
        boolean isWritten = run.said().contains("code 0 same 1 left 0");
        if (!isWritten
                && !(run.said().contains("code 2 same 0 left 0")
                        && said.contains("No space left on device")
                        && said.contains("an earlier output stands as it was"))) {
            throw new AssertionError(said);
        }
        return new Build(new Tool.Run(isWritten ? 0 : 2, said), isWritten);
    }
}
