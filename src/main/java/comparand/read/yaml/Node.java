package comparand.read.yaml;

import static java.util.Objects.requireNonNull;

import comparand.diag.Span;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A value in a YAML file, with its place. */
sealed interface Node {

    Span span();

    /** What kind of thing it is, for messages. */
    String kind();

    /**
     * A single word, number or sentence, as text.
     *
     * @param text the characters after YAML's own unquoting, otherwise unchanged
     * @param contentSpan where the characters themselves start: behind an opening quote
     */
    record Scalar(String text, Span span, Span contentSpan) implements Node {
        public Scalar {
            requireNonNull(text, "text");
        }

        /**
         * The place of some of its characters; the whole of it where they cannot be told from the text, because it
         * runs over lines or holds escapes.
         */
        Span part(int at, int length) {
            boolean asWritten = text.codePointCount(0, text.length()) == contentSpan.length();
            return asWritten && at + length <= text.length()
                    ? contentSpan.part(text.codePointCount(0, at), text.codePointCount(at, at + length))
                    : span;
        }

        boolean isQuoted() {
            return !contentSpan.equals(span);
        }

        /** Nothing written where a value belongs. */
        boolean isEmpty() {
            return !isQuoted() && EMPTY_WORDS.contains(text);
        }

        private static final Set<String> EMPTY_WORDS = Set.of("", "~", "null", "Null", "NULL");

        @Override
        public String kind() {
            return text.isEmpty() ? "nothing" : "a single value";
        }
    }

    /** A list. */
    record Sequence(List<Node> items, Span span) implements Node {
        public Sequence {
            items = List.copyOf(items);
        }

        @Override
        public String kind() {
            return "a list";
        }
    }

    /**
     * Keys with values.
     *
     * @param byKey by their keys, in file order
     */
    record Mapping(Map<String, Entry> byKey, Span span) implements Node {
        public Mapping {
            byKey = Collections.unmodifiableMap(byKey);
        }

        Optional<Entry> entry(String key) {
            return Optional.ofNullable(byKey.get(key));
        }

        /** In file order. */
        Collection<Entry> entries() {
            return byKey.values();
        }

        @Override
        public String kind() {
            return "keys with values";
        }
    }

    /** One key and its value. */
    record Entry(Scalar key, Node value) {}
}
