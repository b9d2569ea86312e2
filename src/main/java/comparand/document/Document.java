package comparand.document;

import static java.util.Objects.requireNonNull;

import java.util.List;

/** A finished document: sections in order, each with its blocks. */
public record Document(String name, Edition edition, List<Section> sections) {

    public Document {
        requireNonNull(edition, "edition");
        sections = List.copyOf(sections);
        if (name.isBlank() || sections.isEmpty()) {
            throw new IllegalArgumentException("a document has a name and sections");
        }
    }
}
