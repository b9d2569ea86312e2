package comparand.intake;

import comparand.document.form.FormList.Word;
import comparand.document.record.Entry;
import comparand.model.library.ConditionText;
import java.util.List;
import java.util.Map;

/** How many of what a figure rests on. */
final class SizePiece implements Piece {

    private static final String N = "n";
    private static final String GROUP = "Spread and number";

    private final Slot number =
            Slot.number(GROUP, "n", "How many does it rest on?", "The number as printed; or: not reported.");

    private final Slot of = Slot.word(
            GROUP,
            "n of what",
            "How many of what?",
            "What was counted. Ten runs of one unit are not ten units.",
            List.of(
                    new Word("units", "devices tested"),
                    new Word("runs", "test runs"),
                    new Word("cases", "operations"),
                    new Word("patients", "patients"),
                    new Word("samples", "blood samples"),
                    new Word("centres", "hospitals or laboratories")));

    @Override
    public List<Slot> slots() {
        return List.of(number, of);
    }

    @Override
    public List<Slot> asked(Answers soFar) {
        return soFar.text(number)
                        .filter(n -> !n.equals(ConditionText.NOT_REPORTED))
                        .isPresent()
                ? slots()
                : List.of(number);
    }

    @Override
    public boolean needs(Slot slot, Answers soFar) {
        return true;
    }

    @Override
    public void write(Draft draft) {
        draft.number(number)
                .ifPresent(n -> draft.put(
                        N, n.equals(ConditionText.NOT_REPORTED) ? n : NumberText.joined(n, draft.text(of)), number));
    }

    @Override
    public void read(Entry.Fields record, Map<Slot, String> cells) {
        record.text(N).ifPresent(n -> new Quantity(number, of).split(n, cells));
    }

    @Override
    public List<String> paths() {
        return List.of(N);
    }
}
