package comparand.document.talk.layout;

/**
 * Why a slide cannot be read, or cannot be spoken to.
 *
 * @param slide its id
 * @param rule which rule it breaks
 * @param text of the slide, the words it is about; may be empty
 * @param found what was measured
 * @param allowed what is allowed
 */
public record Fault(String slide, Rule rule, String text, double found, double allowed) {

    /** Rules of legibility. */
    public enum Rule {
        /** Words of a title. */
        TITLE_WORDS,
        /** Words of running text on a slide that is shown. */
        BODY_WORDS,
        /** Size of the smallest text. */
        SMALLEST_TEXT,
        /** Contrast of text with what is behind it. */
        CONTRAST,
        /** Height of a title. */
        TITLE_HEIGHT,
        /** Height of a part, or of the strip. */
        HEIGHT,
        /** A word wider than its column. */
        WIDTH,
        /** Notes for the speaker: how many headings have lines. */
        NOTES,
        /** Two slides with one title. */
        TITLE_TWICE
    }
}
