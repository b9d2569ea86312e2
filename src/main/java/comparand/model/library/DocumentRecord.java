package comparand.model.library;

import comparand.diag.Located;

/** Which issue of a controlled document was read. */
public record DocumentRecord(
        @Meaning("Revision as printed, such as C or 4") Located<String> revision,
        @Meaning("Date of that revision") Located<PartialDate> date) {

    public String text() {
        return "rev " + revision.value() + ", " + date.value();
    }
}
