package comparand.model;

import comparand.diag.Located;
import comparand.model.library.ScreenedRecord;
import comparand.model.library.ScreeningFate;
import comparand.model.library.SourceRecord;
import comparand.model.library.SourceState;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Stream;

/**
 * How many studies a number of reports are of. Two reports are of one study where the log says so ({@code same-study-as} of
 * a record), where their sources do, and where one is the preprint of the other; what is of one study with a third is of one
 * study with each other. Two revisions of instructions for use are two: each stands for devices of its own.
 */
final class IncludedStudies {

    /** A report leads to another of its study, or to itself. */
    private final Map<String, String> leads = new HashMap<>();

    private IncludedStudies() {}

    /** Every record of the log may tie two included ones together; only these are counted. */
    static int count(List<ScreenedRecord> records, SortedMap<String, SourceRecord> sources) {
        var studies = new IncludedStudies();
        records.forEach(r -> studies.leads.put(r.name(), r.name()));
        for (var record : records) {
            others(record, records, sources).forEach(other -> studies.join(record.name(), other));
        }
        return (int) records.stream()
                .filter(r -> r.is(ScreeningFate.INCLUDED))
                .map(r -> studies.end(r.name()))
                .distinct()
                .count();
    }

    /** Names of the records that are said to be of the same study. */
    private static Stream<String> others(
            ScreenedRecord record, List<ScreenedRecord> records, SortedMap<String, SourceRecord> sources) {
        var byLog = Stream.concat(record.sameStudyAs().stream(), record.duplicateOf().stream());
        var bySource = record.source().flatMap(s -> Optional.ofNullable(sources.get(s.value()))).stream()
                .flatMap(IncludedStudies::sameStudy)
                .flatMap(id -> records.stream().filter(r -> r.isRouteOf(id)).map(ScreenedRecord::name));
        return Stream.concat(byLog.map(Located::value), bySource);
    }

    private static Stream<String> sameStudy(SourceRecord source) {
        var article = source.status().state().value() == SourceState.PREPRINT
                ? source.status().by()
                : Optional.<Located<String>>empty();
        return Stream.concat(source.sameStudyAs().stream(), article.stream()).map(Located::value);
    }

    private void join(String one, String other) {
        if (leads.containsKey(other)) {
            leads.put(end(one), end(other));
        }
    }

    private String end(String report) {
        var at = report;
        for (var next = leads.get(at); next != null && !next.equals(at); next = leads.get(at)) {
            at = next;
        }
        return at;
    }
}
