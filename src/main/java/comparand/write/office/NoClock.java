package comparand.write.office;

import java.io.IOException;
import org.apache.poi.util.Reproducibility;

/**
 * Keeps the clock out of files: the library dates every entry of an archive unless it is told not to. It is told for the whole
 * program at once, and forgets it when the work it was told for ends; whoever writes files side by side therefore does all of
 * it within one work.
 */
public final class NoClock {

    private NoClock() {}

    /** What writes files. */
    public interface Work {
        void run() throws IOException;
    }

    /** Does a work, in which others of these may lie. */
    public static void during(Work work) throws IOException {
        Reproducibility.runWithSourceDateEpoch(work::run);
    }
}
