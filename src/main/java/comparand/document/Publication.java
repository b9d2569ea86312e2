package comparand.document;

import comparand.document.result.ResultSet;
import java.util.List;

/** All that a run has to say: its results as data, and the documents drawn from them. */
public record Publication(ResultSet results, List<Document> documents) {

    public Publication {
        documents = List.copyOf(documents);
    }
}
