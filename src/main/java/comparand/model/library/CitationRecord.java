package comparand.model.library;

import comparand.diag.Located;

/** Where a declared metric or its worked value comes from. */
public record CitationRecord(
        @Meaning("Author, year, title or journal; or common practice")
        Located<String> work,

        @Meaning("Page, table, equation or clause") Located<String> place) {}
