package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.PrintedNumber;
import java.time.LocalDate;
import java.util.Optional;

/** How published values were looked for, and how many records became the sources of the library. */
public record SearchRecord(
        @Meaning("Databases, registers and other places, as one sentence")
        Located<String> where,

        @Meaning("The day of the last search") Located<LocalDate> last,

        @Meaning("Who searched and screened, such as their initials")
        Optional<Located<String>> by,

        @Meaning("The words searched for, whole") Optional<Located<String>> terms,
        @Meaning("How many records were found") Optional<Located<PrintedNumber>> found,
        @Meaning("How many of them were found twice") Optional<Located<PrintedNumber>> duplicates,

        @Meaning("How many were left out by title and abstract")
        Optional<Located<PrintedNumber>> excluded,

        @Meaning("How many could not be obtained") @Key("not-obtained")
        Optional<Located<PrintedNumber>> notObtained) {

    /** Records that became sources, if all counts are given: found less duplicates, excluded and not obtained. */
    public Optional<Integer> read() {
        return found.map(f -> count(f) - count(duplicates) - count(excluded) - count(notObtained));
    }

    public static int count(Optional<Located<PrintedNumber>> number) {
        return number.map(SearchRecord::count).orElse(0);
    }

    private static int count(Located<PrintedNumber> number) {
        return number.value().value().intValue();
    }
}
