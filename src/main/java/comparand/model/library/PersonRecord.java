package comparand.model.library;

import comparand.diag.Located;
import java.util.Optional;

/** An author, in the fields of a CSL-JSON name. */
public record PersonRecord(
        @Meaning("Family name") Optional<Located<String>> family,
        @Meaning("Given names or initials") Optional<Located<String>> given,

        @Meaning("The whole name of a body that is not a person")
        Optional<Located<String>> literal) {

    /** Family name and initials, or the body's name. */
    public String text() {
        return literal.map(Located::value)
                .orElseGet(() -> family.map(Located::value).orElse("")
                        + given.map(g -> " " + g.value().replaceAll("(\\p{L})\\p{L}*[ .]*", "$1"))
                                .orElse(""));
    }
}
