package comparand.read.yaml;

import java.util.ArrayList;
import java.util.List;

/**
 * What is wrong with a text of a record, wherever it stands.
 *
 * @param code of the finding
 */
record TextFault(String code, String message, String fix) {

    /** Eight pages: far more than any abstract, quote or note, and still short enough for every rule that looks at a text. */
    static final int LONGEST = 20_000;

    /**
     * All that is wrong with a text.
     *
     * @param escaped whether signs may stand in it that no file can hold
     */
    static List<TextFault> in(String text, boolean escaped) {
        int unprintable = escaped ? TextSigns.unprintable(text) : -1;
        int turning = TextSigns.turning(text);
        if (text.length() <= LONGEST && unprintable < 0 && turning < 0) {
            return List.of();
        }
        var faults = new ArrayList<TextFault>();
        if (text.length() > LONGEST) {
            faults.add(new TextFault(
                    "yaml-text-too-long",
                    "this text has %d signs, more than the %d a text may have".formatted(text.length(), LONGEST),
                    "shorten it; what is that long belongs into a file of its own"));
        }
        if (unprintable >= 0) {
            faults.add(new TextFault(
                    "text-sign-unprintable",
                    "this text holds the sign U+%04X, which nobody sees".formatted((int) text.charAt(unprintable)),
                    "take the escape out that stands for it"));
        }
        if (turning >= 0) {
            faults.add(new TextFault(
                    "text-turned",
                    "this text holds the sign U+%04X, which turns the order of what is shown behind it"
                            .formatted((int) text.charAt(turning)),
                    "delete the sign; it cannot be seen, so type the text anew if need be"));
        }
        return faults;
    }
}
