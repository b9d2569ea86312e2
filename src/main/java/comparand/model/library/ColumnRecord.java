package comparand.model.library;

import comparand.diag.Located;
import java.util.Optional;

/** What one column of a data file holds. */
@ExactlyOne({"holds", "input", "metric", "condition", "definition"})
public record ColumnRecord(
        @Meaning("device, unit, run, case, centre or ignored")
        Optional<Located<ColumnRole>> holds,

        @Meaning("A quantity that formulas ask for, such as inlet-pressure")
        Optional<Located<String>> input,

        @Meaning("A metric that was measured directly, or yes and no for an event")
        Optional<Located<String>> metric,

        @Meaning("A condition that varies from row to row") Optional<Located<String>> condition,

        @Meaning("An aspect of the definition that varies from row to row, such as parts")
        Optional<Located<String>> definition,

        @Meaning("The unit of the numbers in the column") Optional<Located<String>> unit,
        @Meaning("What the codes in the column stand for") Entries<OneOrMore<Located<String>>> codes) {}
