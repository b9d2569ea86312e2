package comparand.model.template;

import comparand.diag.Located;
import comparand.model.library.AtLeast;
import comparand.model.library.Entries;
import comparand.model.library.Meaning;
import java.util.List;
import java.util.Optional;

/** What the brief for a committee contains. */
@Meaning("What the brief for a committee contains and how it looks, kept as templates/committee.yaml")
public record CommitteeTemplate(
        @Meaning("Always committee") Located<String> template,
        @Meaning("How it looks") Optional<LookRecord> look,
        @Meaning("Its parts, in order") @AtLeast(1) List<Located<Section>> sections,

        @Meaning("Texts in place of those of the language, by their keys")
        Entries<Located<String>> wording) {

    /** Parts of a brief. */
    public enum Section {
        DECISION,
        SAID,
        QUESTIONS,
        COMPARABILITY,
        NOT_KNOWN,
        CHARACTERISTICS,
        OUTSIDE_LABEL,
        COSTS,
        TRIAL,
        TO_ASK,
        CHANGES,
        SOURCES,
        METHODS,
        KEY,
        CAUTIONS
    }
}
