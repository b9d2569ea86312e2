package comparand.document.publication;

import comparand.document.Document;
import comparand.document.chart.Chart;
import comparand.document.result.ResultSet;
import comparand.document.talk.Deck;
import java.util.List;
import java.util.stream.Stream;

/**
 * All that a run has to say: its results as data, and what is drawn from them.
 *
 * @param figures that are written as files of their own
 */
public record Publication(ResultSet results, List<Document> documents, List<Deck> decks, List<Chart> figures) {

    public Publication {
        documents = List.copyOf(documents);
        decks = List.copyOf(decks);
        figures = List.copyOf(figures);
    }

    /** With one more talk. */
    public Publication with(Deck deck) {
        return new Publication(
                results,
                documents,
                Stream.concat(decks.stream(), Stream.of(deck)).toList(),
                figures);
    }
}
