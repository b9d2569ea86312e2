package comparand.model.library;

import comparand.diag.Located;
import java.time.LocalDate;

/** What the authors or the maker of a source added in writing to what is printed. */
public record LetterRecord(
        @Meaning("Who wrote") Located<String> by,
        @Meaning("The day of the letter") Located<LocalDate> on,
        @Meaning("The words of the letter, verbatim") Located<String> says,

        @Meaning("Whether the letter may be cited: yes or no") @Key("may-be-cited")
        Located<YesNo> mayBeCited) {}
