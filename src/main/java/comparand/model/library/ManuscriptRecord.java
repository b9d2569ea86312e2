package comparand.model.library;

import comparand.diag.Located;
import java.util.List;
import java.util.Optional;

/** What a manuscript has to say that no data file holds; what is not given goes to its author's list. */
public record ManuscriptRecord(
        @Meaning("Authors in order, as they are to be printed")
        List<Located<String>> authors,

        @Meaning("Committee, date and number of the approval or waiver, as one sentence")
        Optional<Located<String>> ethics,

        @Meaning("Registry and number of the study, as one sentence")
        Optional<Located<String>> registration,

        @Meaning("How it was decided which patient got which device, as one sentence")
        Optional<Located<String>> allocation,

        @Meaning("Which patients or units were eligible, as one sentence")
        Optional<Located<String>> eligibility,

        @Meaning("Who paid for the study, as one sentence") Optional<Located<String>> funding,

        @Meaning("Where data and code can be had, as one sentence") @Key("data-availability")
        Optional<Located<String>> dataAvailability) {}
