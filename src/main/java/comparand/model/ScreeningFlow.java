package comparand.model;

import comparand.model.library.ScreenedRecord;
import comparand.model.library.ScreeningFate;
import comparand.model.library.ScreeningRecord;
import comparand.model.library.SearchKind;
import comparand.model.library.SourceRecord;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SortedMap;

/**
 * How many records went which way: the boxes of the flow of the PRISMA 2020 statement (Page MJ, McKenzie JE, Bossuyt PM, et
 * al. The PRISMA 2020 statement: an updated guideline for reporting systematic reviews. BMJ 2021;372:n71, figure 1 and items
 * 16a and 16b). Each box is counted by itself from the records of a log; a flow whose boxes do not add up does not exist.
 *
 * @param identified how many records each search found, in the order of the log
 * @param duplicates records removed before screening
 * @param screened records identified less duplicates
 * @param excluded records left out at screening
 * @param sought reports sought for retrieval: records screened less those excluded
 * @param notRetrieved reports not retrieved
 * @param assessed reports assessed for eligibility: those sought less those not retrieved
 * @param reasons reports left out after reading, by reason, in the order in which the log names the reasons first
 * @param reports reports of included studies: those assessed less those left out
 * @param studies included studies; several reports may be of one
 */
public record ScreeningFlow(
        List<Identified> identified,
        int duplicates,
        int screened,
        int excluded,
        int sought,
        int notRetrieved,
        int assessed,
        List<Reason> reasons,
        int reports,
        int studies) {

    public ScreeningFlow {
        identified = List.copyOf(identified);
        reasons = List.copyOf(reasons);
        int found = identified.stream().mapToInt(Identified::records).sum();
        int left = reasons.stream().mapToInt(Reason::reports).sum();
        if (found - duplicates != screened
                || screened - excluded != sought
                || sought - notRetrieved != assessed
                || assessed - left != reports
                || studies > reports
                || (reports > 0 && studies < 1)) {
            throw new IllegalArgumentException(
                    "the counts of a flow add up: %d - %d = %d, - %d = %d, - %d = %d, - %d = %d reports of %d studies"
                            .formatted(
                                    found,
                                    duplicates,
                                    screened,
                                    excluded,
                                    sought,
                                    notRetrieved,
                                    assessed,
                                    left,
                                    reports,
                                    studies));
        }
    }

    /** What one search found. */
    public record Identified(String search, SearchKind kind, int records) {}

    /** How many reports were left out after reading for one reason, in the words of the log. */
    public record Reason(String words, int reports) {}

    /** All records that were found. */
    public int found() {
        return identified.stream().mapToInt(Identified::records).sum();
    }

    /** All reports that were left out after reading. */
    public int excludedAfterReading() {
        return reasons.stream().mapToInt(Reason::reports).sum();
    }

    /**
     * The flow of a log.
     *
     * @param sources of the library, which know of each other what the log need not say again
     */
    public static ScreeningFlow of(ScreeningRecord log, SortedMap<String, SourceRecord> sources) {
        var identified = log.searches().stream()
                .map(s -> new Identified(s.name(), s.kind().value(), log.heldFrom(s.name())))
                .toList();
        var reasons = new LinkedHashMap<String, Integer>();
        log.records().stream()
                .filter(r -> r.is(ScreeningFate.EXCLUDED_AFTER_READING))
                .forEach(r -> reasons.merge(reason(r), 1, Integer::sum));
        return new ScreeningFlow(
                identified,
                count(log, List.of(ScreeningFate.DUPLICATE)),
                count(
                        log,
                        List.of(
                                ScreeningFate.EXCLUDED_AT_SCREENING,
                                ScreeningFate.NOT_RETRIEVED,
                                ScreeningFate.EXCLUDED_AFTER_READING,
                                ScreeningFate.INCLUDED)),
                count(log, List.of(ScreeningFate.EXCLUDED_AT_SCREENING)),
                count(
                        log,
                        List.of(
                                ScreeningFate.NOT_RETRIEVED,
                                ScreeningFate.EXCLUDED_AFTER_READING,
                                ScreeningFate.INCLUDED)),
                count(log, List.of(ScreeningFate.NOT_RETRIEVED)),
                count(log, List.of(ScreeningFate.EXCLUDED_AFTER_READING, ScreeningFate.INCLUDED)),
                reasons.entrySet().stream()
                        .map(e -> new Reason(e.getKey(), e.getValue()))
                        .toList(),
                count(log, List.of(ScreeningFate.INCLUDED)),
                IncludedStudies.count(log.records(), sources));
    }

    private static String reason(ScreenedRecord record) {
        return record.reason().map(r -> r.value().strip()).orElse("");
    }

    private static int count(ScreeningRecord log, List<ScreeningFate> fates) {
        return (int) log.records().stream()
                .filter(r -> fates.contains(r.became().value()))
                .count();
    }
}
