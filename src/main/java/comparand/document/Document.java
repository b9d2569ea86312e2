package comparand.document;

import static java.util.Objects.requireNonNull;

import java.util.List;

/** A finished document: sections in order, each with its blocks. */
public record Document(String name, Form form, Edition edition, Look look, List<Section> sections) {

    /** What kind of file it is to be. */
    public enum Form {
        /** Sheets of a workbook. */
        WORKBOOK,
        /** Pages to print, lying. */
        WIDE_PAGES,
        /** Pages to print, standing. */
        PAGES,
        /** Text that somebody goes on writing. */
        TEXT,
        /** The same, and as plain text for e-mail. */
        LETTER,
        /** To look at on a screen, and to explore. */
        SCREEN
    }

    public Document {
        requireNonNull(edition, "edition");
        sections = List.copyOf(sections);
        if (name.isBlank() || sections.isEmpty()) {
            throw new IllegalArgumentException("a document has a name and sections");
        }
    }
}
