package comparand.document;

import java.util.function.Function;

/** A piece of running text. */
public sealed interface Inline {

    /** As printed. */
    String text();

    <R> R fold(Function<Plain, R> plain, Function<Held, R> held, Function<Cited, R> cited);

    /**
     * Text.
     *
     * @param slanted whether it is set in italics, as reference styles set the names of journals
     */
    record Plain(String text, boolean slanted) implements Inline {

        /** Upright text. */
        public Plain(String text) {
            this(text, false);
        }

        public Plain {
            text = NoBreak.joined(text);
        }

        @Override
        public <R> R fold(Function<Plain, R> plain, Function<Held, R> held, Function<Cited, R> cited) {
            return plain.apply(this);
        }
    }

    /**
     * A number, or several that belong together, which a later run may find again by its name.
     *
     * @param name unique in the document: letters, digits and underscores, as bookmarks want it
     */
    record Held(String name, String text) implements Inline {
        public Held {
            text = NoBreak.joined(text);
        }

        @Override
        public <R> R fold(Function<Plain, R> plain, Function<Held, R> held, Function<Cited, R> cited) {
            return held.apply(this);
        }
    }

    /**
     * References, as the reference style writes them in the text.
     *
     * @param raised whether the style sets them above the line
     */
    record Cited(String text, boolean raised) implements Inline {
        @Override
        public <R> R fold(Function<Plain, R> plain, Function<Held, R> held, Function<Cited, R> cited) {
            return cited.apply(this);
        }
    }
}
