package comparand.manual;

import java.util.List;

/**
 * One page of the manual.
 *
 * @param path of its file within the manual, such as {@code findings/unit-missing.html}
 * @param chapter the page above it, by its path; its own path for the first page of a chapter
 * @param title in words; code between backticks
 * @param lead one sentence that says what it is about; may be empty
 * @param body HTML
 * @param terms what the index names, with its place
 */
record Page(String path, String chapter, String title, String lead, String body, List<Term> terms) {

    Page {
        terms = List.copyOf(terms);
    }

    /**
     * An entry of the index.
     *
     * @param word as it is listed
     * @param anchor within the page; empty for the page itself
     */
    record Term(String word, String anchor) {}

    boolean isFirst() {
        return path.equals(chapter);
    }

    /** The way from this page to another, or to a file. */
    String to(String other) {
        return "../".repeat((int) path.chars().filter(c -> c == '/').count()) + other;
    }

    Page with(String newBody) {
        return new Page(path, chapter, title, lead, newBody, terms);
    }
}
