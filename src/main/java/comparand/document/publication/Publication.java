package comparand.document.publication;

import comparand.document.Document;
import comparand.document.chart.Chart;
import comparand.document.exploration.Page;
import comparand.document.result.ResultSet;
import comparand.document.talk.Deck;
import java.util.List;
import java.util.stream.Stream;

/**
 * All that a run has to say: its results as data, and what is drawn from them.
 *
 * @param figures that are written as files of their own
 */
public record Publication(
        ResultSet results, List<Document> documents, List<Deck> decks, List<Page> pages, List<Chart> figures) {

    public Publication {
        documents = List.copyOf(documents);
        decks = List.copyOf(decks);
        pages = List.copyOf(pages);
        figures = List.copyOf(figures);
    }

    /** The results alone. */
    public static Publication none(ResultSet results) {
        return new Publication(results, List.of(), List.of(), List.of(), List.of());
    }

    /** The results with some documents. */
    public static Publication of(ResultSet results, Document... documents) {
        return new Publication(results, List.of(documents), List.of(), List.of(), List.of());
    }

    /** This with what another reader is given behind it. */
    public Publication with(Publication more) {
        return new Publication(
                results,
                joined(documents, more.documents),
                joined(decks, more.decks),
                joined(pages, more.pages),
                joined(figures, more.figures));
    }

    private static <T> List<T> joined(List<T> first, List<T> second) {
        return Stream.concat(first.stream(), second.stream()).toList();
    }
}
