package comparand.app;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** What went wrong with a file, as a clause. */
final class Reason {

    private Reason() {}

    static String of(IOException e) {
        if (!(e instanceof FileSystemException fault) || fault.getFile() == null) {
            return String.valueOf(e.getMessage()).replaceAll("\\.$", "");
        }
        var path = "`" + fault.getFile() + "` ";
        if (e instanceof FileAlreadyExistsException) {
            return path + "is a file";
        }
        if (e instanceof AccessDeniedException) {
            return path + "may not be written";
        }
        if (e instanceof NoSuchFileException) {
            return path + "is not there";
        }
        return e instanceof DirectoryNotEmptyException || fault.getReason() == null
                ? path + "is in the way"
                : path.strip() + ": " + fault.getReason();
    }
}
