package comparand.model.library;

import comparand.diag.Located;
import java.time.LocalDate;
import java.util.Optional;

/** Whether the source still stands, and when somebody last looked. */
public record StatusRecord(
        @Meaning("current, corrected, concern, retracted, superseded or preprint")
        Located<SourceState> state,

        @Meaning("The day on which corrections and retractions were last looked for")
        Located<LocalDate> checked,

        @Meaning("The notice, as it may be quoted") Optional<Located<String>> notice,

        @Meaning("When the correction, concern or retraction was published")
        Optional<Located<PartialDate>> since,

        @Meaning("The source in this library that takes its place")
        Optional<Located<String>> by) {}
