package comparand.hostile;

import java.io.IOException;
import java.util.List;

/** One reader of the tool, as something that takes bytes. */
interface FuzzedReader {

    /** What findings call the input. */
    String FILE = "input";

    /** In small letters and hyphens: the folder of its corpus. */
    String name();

    /** Valid inputs to begin with. */
    List<byte[]> seeds();

    /** Words that mean something to it. */
    List<String> words();

    Read read(byte[] input) throws IOException;

    /** Whether findings point into the text of the input, by line and column. */
    default boolean isText() {
        return true;
    }
}
