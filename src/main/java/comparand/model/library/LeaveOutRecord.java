package comparand.model.library;

import comparand.diag.Located;

/** A source or value that this dossier leaves out. */
public record LeaveOutRecord(
        @Meaning("The source or value") Located<String> what,
        @Meaning("Why it is left out") Located<String> reason) {}
