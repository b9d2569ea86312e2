package comparand.model.library;

import comparand.diag.Located;
import java.util.Optional;

/** One record that a search found, and what became of it. */
@ExactlyOne({"source", "reference"})
public record ScreenedRecord(
        @Meaning("Name of the record within this log") Located<String> id,
        @Meaning("The source of this library it is") Optional<Located<String>> source,

        @Meaning("What it is, in words, where it is no source of this library")
        Optional<Located<String>> reference,

        @Meaning("The search that found it") Located<String> from,

        @Meaning("duplicate, excluded-at-screening, not-retrieved, excluded-after-reading or included")
        Located<ScreeningFate> became,

        @Meaning("Of a duplicate, the record of this log it repeats") @Key("duplicate-of")
        Optional<Located<String>> duplicateOf,

        @Meaning("Why it was left out; records with the same words are counted together")
        Optional<Located<String>> reason,

        @Meaning("Who decided, such as their initials") Optional<Located<String>> by,

        @Meaning("A record of this log that reports the same study; both reports are counted, the study once")
        @Key("same-study-as")
        Optional<Located<String>> sameStudyAs) {

    public String name() {
        return id.value();
    }

    public boolean is(ScreeningFate fate) {
        return became.value() == fate;
    }

    /** Whether it is this source of the library, and not a second finding of it. */
    public boolean isRouteOf(String sourceId) {
        return !is(ScreeningFate.DUPLICATE)
                && source.filter(s -> s.value().equals(sourceId)).isPresent();
    }
}
