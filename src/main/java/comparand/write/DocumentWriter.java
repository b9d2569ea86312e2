package comparand.write;

import comparand.document.Document;
import java.io.IOException;
import java.io.OutputStream;

/** Sets a document in one format. The same document gives the same bytes, on any day and machine. */
public interface DocumentWriter {

    /** File name ending, without the dot. */
    String extension();

    void write(Document document, OutputStream out) throws IOException;
}
