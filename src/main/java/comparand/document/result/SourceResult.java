package comparand.document.result;

import java.util.List;
import java.util.Optional;

/** A source of published values. */
public record SourceResult(
        @Says("Number by which locators refer to it") int number,
        @Says("Name in records") String id,
        @Says("What kind of document it is") String kind,
        @Says("The reference in words") String reference,
        @Says("Revision and date of a controlled document") Optional<String> revision,
        @Says("Who paid") String funding,

        @Says("Where it stands: current, corrected, retracted ...")
        String state,

        @Says("The day it was last checked for corrections") String checked,
        @Says("The notice of a correction or retraction") Optional<String> notice,
        @Says("Number of values recorded from it") int values,

        @Says("Conditions that decide its values: how many are reported")
        int conditionsReported,

        @Says("Conditions that decide its values: how many there are")
        int conditionsDeciding,

        @Says("Conditions that decide its values and are not reported")
        List<String> missing,

        @Says("When its correction, concern or retraction was published")
        Optional<String> since,

        @Says("The source that takes its place") Optional<String> by,

        @Says("The source that reports the same patients or runs")
        Optional<String> sameStudyAs) {}
