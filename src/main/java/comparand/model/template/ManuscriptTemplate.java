package comparand.model.template;

import comparand.diag.Located;
import comparand.model.library.AtLeast;
import comparand.model.library.Entries;
import comparand.model.library.Key;
import comparand.model.library.Meaning;
import comparand.model.library.YesNo;
import java.util.List;
import java.util.Optional;

/** What the draft of a manuscript contains. */
@Meaning("What the draft of a manuscript contains and how it looks, kept as templates/manuscript.yaml")
public record ManuscriptTemplate(
        @Meaning("Always manuscript") Located<String> template,
        @Meaning("How it looks") Optional<LookRecord> look,

        @Meaning("How references are written: numeric, ama or apa")
        Optional<Located<References>> references,

        @Meaning("yes if lines are numbered, as reviewers want it") @Key("line-numbers")
        Optional<Located<YesNo>> lineNumbers,

        @Meaning("Its parts, in order") @AtLeast(1) List<Located<Section>> sections,

        @Meaning("Texts in place of those of the language, by their keys")
        Entries<Located<String>> wording) {

    /** Parts of a manuscript. */
    public enum Section {
        TO_DO,
        METHODS,
        RESULTS,
        TABLES,
        FIGURES,
        LIMITATIONS,
        REFERENCES,
        SUPPLEMENT
    }

    /** Reference styles. */
    public enum References {
        /** Numbers in brackets in order of citation, after the recommendations of medical editors. */
        NUMERIC,
        AMA,
        APA
    }
}
