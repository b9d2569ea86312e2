package comparand.model.library;

import comparand.diag.Located;
import java.util.Optional;

/** Something that matters for the decision and that no metric of the dossier tests. */
public record UnknownRecord(
        @Meaning("What is not known") Located<String> what,
        @Meaning("The device it is about") Optional<Located<String>> device,
        @Meaning("Why it matters for the decision") Located<String> matters,
        @Meaning("What would settle it") Located<String> settles,
        @Meaning("Who could supply it") Optional<Located<String>> who) {}
