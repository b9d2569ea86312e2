package comparand.reference;

import java.util.List;

/**
 * What a file said of a work that has no place in a citation: kept, so that the same format can have it back.
 *
 * @param format the format's word, such as {@code ris}
 * @param tag the tag or field as the format writes it
 * @param texts all there were under that tag, in their order
 */
public record Kept(String format, String tag, List<String> texts) {

    public Kept {
        texts = List.copyOf(texts);
        if (tag.isBlank() || texts.isEmpty()) {
            throw new IllegalArgumentException("what is kept has a tag and a text");
        }
    }
}
