package comparand.model.template;

import comparand.diag.Located;
import comparand.model.library.AtLeast;
import comparand.model.library.Entries;
import comparand.model.library.Meaning;
import java.util.List;

/** What the page for a screen contains. */
@Meaning("What the page for a screen contains, kept as templates/page.yaml")
public record PageTemplate(
        @Meaning("Always page") Located<String> template,
        @Meaning("Its parts, in order") @AtLeast(1) List<Located<Section>> sections,

        @Meaning("Texts in place of those of the language, by their keys")
        Entries<Located<String>> wording) {

    /** Parts of a page. */
    public enum Section {
        /** Every question with its answers in short. */
        QUESTIONS,
        /** One part a question: figures, pairs, conditions. */
        ANSWERS,
        NOT_KNOWN,
        SCENARIOS,
        SOURCES,
        SET_ASIDE,
        SEARCH,
        TOLERANCES,
        FINDINGS,
        /** The way from print to table of every value. */
        TRAIL,
        KEY
    }
}
