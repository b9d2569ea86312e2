package comparand.intake;

import comparand.document.form.FormList.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** A reading from a figure, in the order of its record: the picture, its axis, the places that were read of it. */
final class ReadingPieces {

    static final String GROUP = "Reading from a figure";
    static final String ROOT = FigurePiece.READ_FROM_FIGURE;

    static final Slot ERROR_BAR = Slot.text(
            GROUP,
            "ends of the error bar, picture points",
            "At which picture points does its error bar begin and end?",
            "Both ends with ; between them; what it stands for goes into `kind of spread`. Empty if it has none.");

    private static final Predicate<Answers> READ = a -> a.is(FigurePiece.KIND, ROOT);
    private static final List<Word> YES_NO = List.of(new Word("yes", "it is"), new Word("no", "it is not"));

    private final List<Piece> pieces = new ArrayList<>();

    private ReadingPieces(List<Word> units) {
        picture();
        pieces.add(new AxisPiece(units));
        axis(units);
        places();
    }

    static List<Piece> of(List<Word> units) {
        return List.copyOf(new ReadingPieces(units).pieces);
    }

    private void picture() {
        pieces.add(TextPiece.of(
                ROOT + "/picture/sha256",
                Slot.text(
                        GROUP,
                        "picture, SHA-256",
                        "Which picture? Its SHA-256?",
                        "The SHA-256 of the file the picture points are counted in: `sha256sum FILE`, or `certutil -hashfile FILE SHA256`."),
                READ));
        number(
                "picture/zoom",
                false,
                "enlarged, times",
                "How many times was it enlarged on the screen?",
                "4 for 400 %. Picture points are counted in the picture as it is stored.");
    }

    private void axis(List<Word> units) {
        points(
                "ends",
                "ends of the axis, picture points",
                "At which picture points does the axis begin and end?",
                "Both ends with ; between them. The ticks should span a quarter of it or more.");
        number(
                "angle",
                false,
                "angle of the axis, degrees",
                "By how many degrees does the axis stand askew?",
                "0 for a straight one; more than 0.5: turn the picture and read it again.");
        points(
                "broken-at",
                "axis broken at, picture points",
                "Is the axis broken? At which picture point?",
                "Empty if it is not broken.");
        pieces.add(new QuantityPiece(
                ROOT + "/bars-from",
                new Quantity(
                        Slot.number(
                                GROUP,
                                "bars rise from",
                                "Is it a bar chart? From which value do its bars rise?",
                                "0 where they rise from zero. Empty if it has no bars."),
                        Slot.suggested(
                                GROUP, "bars rise from, unit", "In which unit?", "As printed at the axis.", units)),
                READ));
    }

    private void places() {
        pieces.add(PointsPiece.needed(
                ROOT + "/points",
                Slot.text(
                        GROUP,
                        "read at, picture points",
                        "At which picture point is the value? Two readings with ; between them are better than one.",
                        "The place of the mark along the same axis. Read it twice and write both with ; between them."),
                READ));
        pieces.add(new FurtherPointsPiece(
                ROOT + "/also-read",
                Slot.text(
                        GROUP,
                        "read by others at",
                        "Who else read it, and at which picture points?",
                        "Initials and picture points, people with ; between them: CD 358 357.5; EF 356. Empty if nobody did."),
                READ));
        number(
                "point-uncertainty",
                true,
                "uncertainty, picture points",
                "By how many picture points may a reading be off?",
                "How far off a reading may be; 1 to 2 picture points on a sharp figure.");
        var size = number(
                "mark-size",
                false,
                "size of the mark, picture points",
                "How large is the mark along the axis?",
                "In picture points; empty where its centre is plain.");
        pieces.add(TextPiece.of(
                ROOT + "/centre-uncertain",
                Slot.word(
                        GROUP,
                        "centre of the mark uncertain",
                        "Is the centre of the mark uncertain?",
                        "Where it is, half the size of the mark is added to the error of the reading.",
                        YES_NO),
                READ.and(a -> a.text(size).isPresent())));
        pieces.add(PointsPiece.of(ROOT + "/error-bar", ERROR_BAR, READ));
        pieces.add(TextPiece.of(
                ROOT + "/shows",
                Slot.word(
                        GROUP,
                        "mark shows",
                        "What does the mark stand for?",
                        "What the legend says the mark is.",
                        List.of(
                                new Word("mean", "a mean"),
                                new Word("median", "a median"),
                                new Word("value", "a single figure"))),
                READ));
    }

    private Slot number(String key, boolean needed, String heading, String question, String help) {
        var slot = Slot.number(GROUP, heading, question, help);
        pieces.add(new TextPiece(ROOT + "/" + key, slot, needed, READ));
        return slot;
    }

    private void points(String key, String heading, String question, String help) {
        pieces.add(PointsPiece.of(ROOT + "/" + key, Slot.text(GROUP, heading, question, help), READ));
    }
}
