package comparand.document;

import java.util.Optional;

/**
 * How a house wants its documents to look.
 *
 * @param house named at the foot of every page; may be empty
 * @param paper of printed documents
 * @param face the type face that office programs are asked for
 * @param fonts the faces that are embedded in PDF and figures, in place of those the tool brings
 * @param slides a presentation whose masters and layouts a talk takes over
 * @param lineNumbers whether the lines of a text are numbered, as reviewers want it
 */
public record Look(
        String house, Paper paper, String face, Optional<Fonts> fonts, Optional<Content> slides, boolean lineNumbers) {

    /** The look of documents whose lines are not numbered. */
    public Look(String house, Paper paper, String face, Optional<Fonts> fonts, Optional<Content> slides) {
        this(house, paper, face, fonts, slides, false);
    }

    /** What the tool does unless a template says otherwise. */
    public static final Look PLAIN = new Look("", Paper.A4, "Arial", Optional.empty(), Optional.empty());

    /** The same with its lines numbered, or not. */
    public Look withLineNumbers(boolean numbered) {
        return new Look(house, paper, face, fonts, slides, numbered);
    }

    /** Sizes of paper. */
    public enum Paper {
        A4,
        LETTER
    }

    /** A regular and a strong face, as TrueType or OpenType files. */
    public record Fonts(Content regular, Content strong) {}

    /** A file: its name and its bytes. */
    public static final class Content {

        private final String name;
        private final byte[] bytes;

        public Content(String name, byte[] bytes) {
            this.name = name;
            this.bytes = bytes.clone();
        }

        public String name() {
            return name;
        }

        public byte[] bytes() {
            return bytes.clone();
        }
    }
}
