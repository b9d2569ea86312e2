package comparand.document;

import java.util.List;

/**
 * A part of a document: a chapter, or a sheet.
 *
 * @param name short, unique in the document: the name of a sheet or bookmark
 * @param heading as printed above it
 * @param onNewPage whether a text begins a page with it
 */
public record Section(String name, String heading, List<Block> blocks, boolean onNewPage) {

    /** A part that follows the one before it. */
    public Section(String name, String heading, List<Block> blocks) {
        this(name, heading, blocks, false);
    }

    public Section {
        blocks = List.copyOf(blocks);
        if (name.isBlank() || name.length() > 31) {
            throw new IllegalArgumentException("a section has a name of at most 31 characters, got: " + name);
        }
    }
}
