package comparand.model.library;

import comparand.diag.Located;
import java.util.List;
import java.util.Optional;

/** Where and when the patients of a source were treated: by it two reports of the same patients are found. */
public record CohortRecord(
        @Meaning("The hospitals, as the source names them; one name for each in the whole library")
        List<Located<String>> centres,

        @Meaning("When the first patient was treated") Located<PartialDate> from,
        @Meaning("When the last patient was treated") Located<PartialDate> to,

        @Meaning("Why its patients are others than those of a source with the same hospital, device and time")
        Optional<Located<String>> independent) {}
