package comparand.model.library;

import comparand.diag.Located;
import java.util.List;
import java.util.Optional;

/** Where sources were looked for, and what became of everything that was found. */
@Meaning("What was searched and what became of every record found, kept in screening/")
public record ScreeningRecord(
        @Meaning("Name of the log: the file name without its ending")
        Located<String> screening,

        @Meaning("Every search, one entry each") @AtLeast(1) List<SearchRecord> searches,

        @Meaning("Every record that was found, one entry each; one found twice is two records")
        List<ScreenedRecord> records,

        @Meaning("A remark for the reader of the library") Optional<Located<String>> remark) {

    public String id() {
        return screening.value();
    }

    /** One of the records by its name within the log. */
    public Optional<ScreenedRecord> record(String id) {
        return records.stream().filter(r -> r.id().value().equals(id)).findFirst();
    }

    /** How many of the records came from a search. */
    public int heldFrom(String search) {
        return (int)
                records.stream().filter(r -> r.from().value().equals(search)).count();
    }
}
