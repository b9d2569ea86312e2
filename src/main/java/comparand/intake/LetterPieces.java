package comparand.intake;

import comparand.document.form.FormList.Word;
import java.util.List;

/** What the authors or the maker added in writing to what is printed. */
final class LetterPieces {

    private static final String GROUP = "A letter";
    private static final String ROOT = "letter/";

    private LetterPieces() {}

    static List<Piece> of() {
        var by = Slot.text(
                GROUP,
                "letter by",
                "Did the authors or the maker add something in writing? Who?",
                "Who wrote, such as A. Author; empty if nobody did.");
        return List.of(
                TextPiece.of(ROOT + "by", by),
                of(by, "on", Slot.date(GROUP, "letter of", "Of which day is the letter?", "Year-month-day.")),
                of(
                        by,
                        "says",
                        Slot.text(
                                GROUP,
                                "letter says",
                                "What does it say, verbatim?",
                                "The words of the letter, verbatim.")),
                of(
                        by,
                        "may-be-cited",
                        Slot.word(
                                GROUP,
                                "letter may be cited",
                                "May it be cited?",
                                "A value that rests on a letter that may not be cited is kept out of comparisons.",
                                List.of(
                                        new Word("yes", "whoever wrote it agrees"),
                                        new Word("no", "not, or not asked yet")))));
    }

    private static Piece of(Slot by, String key, Slot slot) {
        return new TextPiece(ROOT + key, slot, true, a -> a.text(by).isPresent());
    }
}
