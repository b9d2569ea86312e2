package comparand.model.template;

import comparand.diag.Located;
import comparand.model.library.AtLeast;
import comparand.model.library.Entries;
import comparand.model.library.Meaning;
import java.util.List;
import java.util.Optional;

/** What the slides of a talk contain. */
@Meaning("What a talk contains and how it looks, kept as templates/talk.yaml")
public record TalkTemplate(
        @Meaning("Always talk") Located<String> template,
        @Meaning("How it looks") Optional<LookRecord> look,

        @Meaning("A presentation beside this file whose masters and layouts are taken over")
        Optional<Located<String>> slides,

        @Meaning("Its parts, in order") @AtLeast(1) List<Located<Section>> sections,

        @Meaning("Texts in place of those of the language, by their keys")
        Entries<Located<String>> wording) {

    /** Parts of a talk. */
    public enum Section {
        QUESTION,
        METHOD,
        ANSWER,
        MESSAGES,
        NOT_COMPARED,
        NOT_KNOWN,
        TAKE_HOME,
        BACKUP
    }
}
