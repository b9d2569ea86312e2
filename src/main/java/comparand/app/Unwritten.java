package comparand.app;

import comparand.write.whole.WholeFiles;
import java.io.IOException;
import java.nio.file.Path;

/** Why files of a library could not be written, and what stands in it then. */
final class Unwritten {

    private Unwritten() {}

    static String records(IOException e, Path library) {
        return "The records could not be written: " + because(e, library);
    }

    /** The reason and what follows, as the end of a sentence and one more. */
    static String because(IOException e, Path library) {
        if (e instanceof WholeFiles.ChangedMeanwhile changed) {
            return "`%s` was changed meanwhile by somebody else. %s"
                    .formatted(library.resolve(changed.path()), stands(library));
        }
        return Reason.of(e) + ". " + stands(library);
    }

    private static String stands(Path library) {
        return WholeFiles.isUnsettled(library)
                ? "Some may be new and some old; the next command on this library brings it to its end."
                : "All files are as they were.";
    }
}
