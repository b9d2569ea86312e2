package comparand.document.exploration;

import static java.util.Objects.requireNonNull;

import comparand.document.Document;

/**
 * A page for a screen: a document that is complete by itself, and what can be tried on it where scripts may run.
 *
 * @param document of the form {@link Document.Form#SCREEN}
 */
public record Page(Document document, Exploration exploration) {
    public Page {
        requireNonNull(exploration, "exploration");
        if (document.form() != Document.Form.SCREEN) {
            throw new IllegalArgumentException("a page is made for a screen, got " + document.form());
        }
    }
}
