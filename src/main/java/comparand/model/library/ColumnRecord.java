package comparand.model.library;

import comparand.diag.Located;
import java.util.Optional;

/** What one column of a data file holds. */
@ExactlyOne({"holds", "input", "metric", "condition", "definition", "at", "measures"})
public record ColumnRecord(
        @Meaning(
                "device, unit, run, case, centre, sample, elapsed (time), time-point, date, remark or ignored; in a file with"
                        + " one row per measured quantity also value and unit-of-value; in counts of bubbles channel, bin-from, bin-to, bin-count")
        Optional<Located<ColumnRole>> holds,

        @Meaning("A quantity that formulas ask for, such as inlet-pressure")
        Optional<Located<String>> input,

        @Meaning("A metric that was measured directly, or yes and no for an event")
        Optional<Located<String>> metric,

        @Meaning("A condition that varies from row to row") Optional<Located<String>> condition,

        @Meaning("An aspect of the definition that varies from row to row, such as parts")
        Optional<Located<String>> definition,

        @Meaning("A quantity that is another input at each time point: {start: free-haemoglobin-start, end:"
                + " free-haemoglobin-end}; the words are those of the column that holds the time-point")
        Entries<Located<String>> at,

        @Meaning("In a file with one row per measured quantity: what each word of this column measures")
        Entries<QuantityRecord> measures,

        @Meaning("The unit of the numbers in the column") Optional<Located<String>> unit,
        @Meaning("What the codes in the column stand for") Entries<OneOrMore<Located<String>>> codes,

        @Meaning("What stands in this column where a value is missing, beside what the file declares")
        Optional<OneOrMore<Located<String>>> missing,

        @Meaning("Differences between two spellings of one name that do not count: spaces, letter-case, leading-zeros")
        Optional<OneOrMore<Located<SpellingDifference>>> ignoring,

        @Meaning("How dates are written in it: year-month-day, day-month-year or month-day-year")
        Optional<Located<DateOrder>> dateOrder) {}
