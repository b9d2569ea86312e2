package comparand.document.result;

import java.util.List;
import java.util.Optional;

/** How the sources were found, and what became of every record. */
public record ScreeningResult(
        @Says("Name of the log") String log,

        @Says("Whose terms the boxes of the flow have, and what is not claimed")
        String terms,

        @Says("Every search in the order of the log") List<SearchResult> searches,
        @Says("How many went which way") FlowResult flow,
        @Says("Every record in the order of the log") List<ScreenedResult> records) {

    /** One search. */
    public record SearchResult(
            @Says("Name of the search") String id,
            @Says("What was searched") String where,

            @Says("database, register, website, organisation, citations or other")
            String kind,

            @Says("The day of the search") String on,
            @Says("Who searched") Optional<String> by,
            @Says("The words searched for") Optional<String> words,
            @Says("How many records it found") int records) {}

    /** The boxes of the flow; each is the one before it less what left there. */
    public record FlowResult(
            @Says("Records identified by all searches") int identified,

            @Says("Duplicate records removed before screening")
            int duplicates,

            @Says("Records screened") int screened,
            @Says("Records excluded at screening") int excluded,
            @Says("Reports sought for retrieval") int sought,
            @Says("Reports not retrieved") int notRetrieved,
            @Says("Reports assessed for eligibility") int assessed,
            @Says("Reports excluded after reading") int excludedAfterReading,

            @Says("Reports excluded after reading, by reason")
            List<ExclusionResult> reasons,

            @Says("Reports of included studies") int reports,

            @Says("Included studies; several reports may be of one")
            int studies) {}

    /** One reason. */
    public record ExclusionResult(
            @Says("The reason in words") String reason,
            @Says("How many were excluded for it") int reports) {}

    /** One record. */
    public record ScreenedResult(
            @Says("Name of the record") String id,
            @Says("Name of the source it is") Optional<String> source,
            @Says("What it is, in words") String reference,
            @Says("Name of the search that found it") String from,

            @Says("duplicate, excluded-at-screening, not-retrieved, excluded-after-reading or included")
            String became,

            @Says("Of a duplicate, the record it repeats") Optional<String> duplicateOf,
            @Says("Why it was left out") Optional<String> reason,
            @Says("Who decided") Optional<String> by,

            @Says("A record that reports the same study") Optional<String> sameStudyAs) {}
}
