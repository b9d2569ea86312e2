package comparand.reference.format;

import comparand.model.library.PartialDate;
import comparand.model.library.SourceState;
import comparand.reference.Notice;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The standing of a work as a note, for formats that have no tag for it: {@code Status: retracted (2022-05): notice of the
 * editor}. It is written into every export, so that a withdrawn work never travels without that word.
 */
final class StatusNote {

    private static final Pattern FORM = Pattern.compile(
            "Status: (?<word>retracted|corrected|concern)(?: \\((?<since>\\d{4}(?:-\\d{2}){0,2})\\))?(?:: (?<text>.+))?");

    private StatusNote() {}

    static String of(Notice notice) {
        return "Status: " + notice.word()
                + notice.since().map(d -> " (" + d + ")").orElse("")
                + (notice.text().isEmpty() ? "" : ": " + notice.text());
    }

    /** Empty if the note says something else. */
    static Optional<Notice> read(String note) {
        var form = FORM.matcher(Plain.text(note));
        if (!form.matches()) {
            return Optional.empty();
        }
        var since = Optional.ofNullable(form.group("since")).flatMap(PartialDate::read);
        var text = Optional.ofNullable(form.group("text")).orElse("");
        return Optional.of(
                new Notice(SourceState.valueOf(form.group("word").toUpperCase(java.util.Locale.ROOT)), text, since));
    }
}
