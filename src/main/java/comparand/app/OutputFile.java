package comparand.app;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/**
 * A file that is to be written.
 *
 * @param name within the folder of outputs, with slashes
 * @param from all that it is written from; two files of one name that are written from the same have the same bytes
 */
record OutputFile(String name, List<Object> from, Writing writing) {

    OutputFile {
        from = List.copyOf(from);
    }

    /** Writes the content. */
    @FunctionalInterface
    interface Writing {
        void into(OutputStream out) throws IOException;
    }
}
