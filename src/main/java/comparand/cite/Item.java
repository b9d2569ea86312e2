package comparand.cite;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A work that can be cited, in the fields of CSL-JSON.
 *
 * @param id unique among the works of a text
 * @param type as CSL names types, such as {@code article-journal}; one that CSL does not know is set as a document
 * @param issued year, month, day as far as known; may be empty
 * @param fields the others that are known
 */
public record Item(
        String id,
        String type,
        String title,
        List<Author> authors,
        List<Author> editors,
        List<Integer> issued,
        Map<Field, String> fields) {

    /** Fields of text. */
    public enum Field {
        CONTAINER_TITLE,
        CONTAINER_TITLE_SHORT,
        COLLECTION_TITLE,
        VOLUME,
        ISSUE,
        NUMBER,
        PAGE,
        PUBLISHER,
        PUBLISHER_PLACE,
        EDITION,
        DOI,
        PMID,
        PMCID,
        ISBN,
        URL
    }

    /**
     * A person with a family name, or a body by its whole name.
     *
     * @param particle before the family name and part of it, such as {@code van der}
     * @param dropping behind the given name where names are inverted
     */
    public record Author(String family, String given, String particle, String dropping, String suffix, String literal) {

        public static Author person(String family, String given) {
            return new Author(family, given, "", "", "", "");
        }

        public static Author body(String name) {
            return new Author("", "", "", "", "", name);
        }
    }

    /** A work without editors. */
    public Item(
            String id,
            String type,
            String title,
            List<Author> authors,
            List<Integer> issued,
            Map<Field, String> fields) {
        this(id, type, title, authors, List.of(), issued, fields);
    }

    public Item {
        authors = List.copyOf(authors);
        editors = List.copyOf(editors);
        issued = List.copyOf(issued);
        var known = new EnumMap<Field, String>(Field.class);
        known.putAll(fields);
        fields = Collections.unmodifiableMap(known);
        if (id.isBlank() || title.isBlank() || issued.size() > 3) {
            throw new IllegalArgumentException("a work has an id, a title and at most year, month and day: " + id);
        }
    }
}
