package comparand.model.library;

import comparand.diag.Located;
import java.util.Optional;

/** Where a statement about a device comes from. */
public record SourcedRecord(
        @Meaning("The source in this library") Located<String> source,
        @Meaning("Where it stands there") PlaceRecord place,
        @Meaning("The words, verbatim") Optional<Located<String>> quote) {}
