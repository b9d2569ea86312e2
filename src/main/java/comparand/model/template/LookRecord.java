package comparand.model.template;

import comparand.diag.Located;
import comparand.model.library.Meaning;
import java.util.Optional;

/** How a house wants its documents to look. */
public record LookRecord(
        @Meaning("The name of the house, at the foot of every page")
        Optional<Located<String>> house,

        @Meaning("Size of paper: a4 or letter") Optional<Located<Paper>> paper,

        @Meaning("The type face that office programs are asked for, such as Arial")
        Optional<Located<String>> face,

        @Meaning("The faces embedded in PDF and figures, as font files beside this file")
        Optional<FontsRecord> fonts) {

    /** Sizes of paper. */
    public enum Paper {
        A4,
        LETTER
    }

    /** Two font files, TrueType or OpenType. */
    public record FontsRecord(
            @Meaning("File of the regular face") Located<String> regular,
            @Meaning("File of the strong face") Located<String> strong) {}
}
