package comparand.intake;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.document.record.Entry;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/**
 * What was taken from answers: for every source that changes, its whole record as it should be.
 *
 * @param sources the wanted record of each source, by its name
 * @param places by source, where each path of its record was answered; the path of a value begins with
 *     {@code values/ID}
 * @param echoes what was read otherwise than it was typed
 * @param sentences each value in a sentence, to be read against the source
 */
public record Taken(
        SortedMap<String, Entry.Fields> sources,
        Map<String, SortedMap<String, Span>> places,
        List<Echo> echoes,
        List<String> sentences,
        List<Diagnostic> findings) {

    public Taken {
        echoes = List.copyOf(echoes);
        sentences = List.copyOf(sentences);
        findings = List.copyOf(findings);
    }
}
