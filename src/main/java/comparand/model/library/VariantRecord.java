package comparand.model.library;

import comparand.diag.Located;

/** One way a declared metric is defined in print. */
public record VariantRecord(
        @Meaning("The word records use") Located<String> variant,
        @Meaning("What it means") Located<String> means) {}
