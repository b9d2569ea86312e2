package comparand.hostile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;

/** Ends the program where an input is not done with after minutes, and leaves the input. */
final class Watch extends Thread {

    private static final long LOOK = 30_000;
    private static final int PATIENCE = 6;

    private final List<Fuzzing> runs;
    private final Path folder;

    Watch(List<Fuzzing> runs, Path folder) {
        super("watch");
        setDaemon(true);
        this.runs = runs;
        this.folder = folder;
    }

    @Override
    public void run() {
        var seen = new HashMap<Fuzzing, byte[]>();
        var times = new HashMap<Fuzzing, Integer>();
        try {
            while (true) {
                Thread.sleep(LOOK);
                for (var run : runs) {
                    var now = run.current();
                    int same = now.length > 0 && run.isAtWork() && seen.get(run) == now
                            ? times.merge(run, 1, Integer::sum)
                            : 0;
                    times.put(run, same);
                    seen.put(run, now);
                    if (same >= PATIENCE) {
                        Files.createDirectories(folder);
                        Files.write(folder.resolve(run.name() + "-no-end"), now);
                        System.err.println(run.name() + ": no end; the input is in " + folder);
                        Runtime.getRuntime().halt(1);
                    }
                }
            }
        } catch (InterruptedException e) {
            // all is done
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
