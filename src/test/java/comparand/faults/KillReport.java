package comparand.faults;

import comparand.faults.KilledBuilds.Found;
import comparand.faults.KilledBuilds.Kill;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What is left by builds and other commands that are killed, and by disks that are full. Takes ten minutes or more, so no part
 * of a build; the report is kept beside the tests. Needs the packaged tool, and a Linux that lets a process mount a file
 * system of its own.
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=comparand.faults.KillReport
 * </pre>
 */
public final class KillReport {

    static final Path REPORT = Path.of("src/test/resources/reports/faults.md");
    private static final int ROUNDS = 40;
    private static final int AT_ANY_MOMENT = 3;
    private static final int AT_THE_EXCHANGE = 2;
    private static final List<Integer> BLOCKS = List.of(1, 2, 4, 8, 16, 32, 48, 64, 96, 128, 160, 200, 256, 320, 4000);
    private static final List<Integer> PERCENT = List.of(102, 105, 110, 120, 135, 150, 165, 180, 190, 250);

    private final List<Kill> any = new ArrayList<>();
    private final List<Kill> exchange = new ArrayList<>();
    private final List<KilledRecords.Kill> starts = new ArrayList<>();
    private final List<KilledRecords.Kill> imports = new ArrayList<>();
    private final List<String> disks = new ArrayList<>();

    private KillReport() {}

    /**
     * Writes the report, anew after each round; ends with a fault where anything stands between old and new. A number of rounds
     * may be given.
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        var report = new KillReport();
        var folder = Files.createTempDirectory("comparand-faults");
        var builds = new KilledBuilds(Files.createDirectory(folder.resolve("builds")), 20261120);
        var records = new KilledRecords(Files.createDirectory(folder.resolve("records")), 20261121);
        var disk = new SmallDisk(Files.createDirectory(folder.resolve("disk")));
        disk.first();
        Files.createDirectories(REPORT.getParent());
        int rounds = args.length == 0 ? ROUNDS : Integer.parseInt(args[0]);
        for (int round = 0; round < rounds; round++) {
            report.round(round, builds, records, disk);
            Files.writeString(REPORT, report.text());
        }
    }

    private void round(int round, KilledBuilds builds, KilledRecords records, SmallDisk disk)
            throws IOException, InterruptedException {
        for (int i = 0; i < AT_ANY_MOMENT; i++) {
            any.add(builds.atAnyMoment());
        }
        for (int i = 0; i < AT_THE_EXCHANGE; i++) {
            exchange.add(builds.atTheExchange());
        }
        starts.add(records.start());
        imports.add(records.references());
        if (round < PERCENT.size()) {
            int percent = PERCENT.get(round);
            disks.add("| a file system of %d %% of the earlier output, which is on it | %s |\n"
                    .formatted(percent, said(disk.onADiskOf(percent))));
        }
        if (round < BLOCKS.size()) {
            int blocks = BLOCKS.get(round);
            disks.add("| no file above %d blocks of 512 bytes | %s |\n"
                    .formatted(blocks, said(disk.withFilesUpTo(blocks))));
        }
    }

    private String text() {
        return """
                # Killed builds and full disks

                The packaged tool, started as a user starts it, builds a small library for one reader over an earlier output that is in
                another language, and is killed (SIGKILL). Then every path and byte is held against the two outputs, each built before in
                peace. Then `comparand changes` is given the place, and all is held against them again: the folder must be the old output
                or the new one, with nothing left beside it. Seeded, but a kill hits where the machine happens to be.

                Written by `mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=comparand.faults.KillReport`.

                ## Builds

                | killed | number | gone before | old stood | new stood | between the renames | leftovers beside it | after the next command: old | new | neither |
                |---|--:|--:|--:|--:|--:|--:|--:|--:|--:|
                """
                + line("at any moment", any)
                + line("while the folder was exchanged", exchange)
                + """

                ## Records

                Killed while they write, then `comparand check` on the library. *Cut off*: the journal, or what was made ready for it, was
                left.

                | command | number | gone before | cut off | after the next command: all files | none | some |
                |---|--:|--:|--:|--:|--:|--:|
                """
                + records("`start`", starts)
                + records("`references import --write`", imports)
                + """

                ## Disks that take no more

                The same build over an earlier output; where it is refused, exit code 2, `an earlier output stands as it was`, every byte as
                before, nothing left beside it.

                | limit | outcome |
                |---|---|
                """
                + disks.stream().sorted().collect(Collectors.joining());
    }

    private static String line(String when, List<Kill> kills) {
        return "| %s | %d | %d | %d | %d | %d | %d | %d | %d | 0 |\n"
                .formatted(
                        when,
                        kills.size(),
                        kills.stream().filter(k -> !k.inTime()).count(),
                        kills.stream().filter(k -> k.found() == Found.OLD).count(),
                        kills.stream().filter(k -> k.found() == Found.NEW).count(),
                        kills.stream().filter(k -> k.found() == Found.BETWEEN).count(),
                        kills.stream().filter(Kill::leftovers).count(),
                        kills.stream().filter(k -> k.then() == Found.OLD).count(),
                        kills.stream().filter(k -> k.then() == Found.NEW).count());
    }

    private static String records(String command, List<KilledRecords.Kill> kills) {
        return "| %s | %d | %d | %d | %d | %d | 0 |\n"
                .formatted(
                        command,
                        kills.size(),
                        kills.stream().filter(k -> !k.inTime()).count(),
                        kills.stream().filter(KilledRecords.Kill::cutOff).count(),
                        kills.stream().filter(KilledRecords.Kill::isNew).count(),
                        kills.stream().filter(k -> !k.isNew()).count());
    }

    private static String said(SmallDisk.Build build) {
        return build.isWritten()
                ? "written"
                : build.run()
                        .said()
                        .lines()
                        .filter(l -> l.contains("could not be written"))
                        .findFirst()
                        .map(l -> l.strip().replaceFirst("`/.*/", "`"))
                        .orElse("refused");
    }
}
