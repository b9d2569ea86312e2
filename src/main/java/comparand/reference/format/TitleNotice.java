package comparand.reference.format;

import comparand.model.library.SourceState;
import comparand.reference.Notice;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A title without the word that publishers put before it when a work is withdrawn, such as {@code RETRACTED:} (common
 * practice), and what that word says.
 */
record TitleNotice(String title, Optional<Notice> notice) {

    private static final Pattern WITHDRAWN = Pattern.compile(
            "(?i)^\\s*(?<word>(?:\\[\\s*(?:retracted|withdrawn)(?: article)?\\s*\\]\\s*:?|(?:retracted|withdrawn)(?: article)?\\s*:))\\s*(?=\\S)");

    static TitleNotice of(String title) {
        var word = WITHDRAWN.matcher(title);
        return word.find()
                ? new TitleNotice(
                        title.substring(word.end()).strip(),
                        Optional.of(new Notice(
                                SourceState.RETRACTED,
                                "the title begins with " + word.group("word").strip(),
                                Optional.empty())))
                : new TitleNotice(title, Optional.empty());
    }
}
