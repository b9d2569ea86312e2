package comparand.model.library;

import comparand.diag.Located;

/** Rows left out of a study because of what stands in one of their cells. */
public record DropRuleRecord(
        @Meaning("The heading of a column of this file") Located<String> column,

        @Meaning("The words in it for which a row is left out, letter by letter")
        OneOrMore<Located<String>> is,

        @Meaning("Why such rows are left out") Located<String> reason) {}
