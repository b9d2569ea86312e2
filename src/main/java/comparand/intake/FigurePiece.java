package comparand.intake;

import comparand.diag.Diagnostic;
import comparand.document.form.FormList.Word;
import comparand.document.record.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What the source prints: which kind of figure it is, and the figure. One of the keys of a value that exclude each other. */
final class FigurePiece implements Piece {

    static final String READ_FROM_FIGURE = "read-from-figure";
    private static final String RANGE = "range";
    private static final String COUNT = "count";
    private static final String CLAIM = "claim";

    private static final String GROUP = "The figure";

    static final List<Word> KINDS = List.of(
            new Word("mean", "a mean"),
            new Word("median", "a median"),
            new Word("value", "a single figure that the source calls neither mean nor limit"),
            new Word("at-least", "a lower limit: the source says at least, or ≥"),
            new Word("at-most", "an upper limit: the source says at most, up to, or ≤"),
            new Word("about", "a figure the source calls approximate"),
            new Word(RANGE, "two ends"),
            new Word(COUNT, "events out of cases or units, such as 19 of 42"),
            new Word(
                    READ_FROM_FIGURE,
                    "not printed, but read from a figure; the readings stand on the sheet Figure points"),
            new Word(CLAIM, "words without a number; recorded and never compared"));

    static final Slot KIND = Slot.word(
            GROUP,
            "kind of figure",
            "What kind of figure is it?",
            "What the source calls the figure: a mean, a median, a limit. \"Up to 78\" is at-most, not a mean.",
            KINDS);

    private final Slot claim = Slot.text(
            GROUP,
            "claim",
            "What does the source claim?",
            "Words without a number, as printed. Only for the kind claim.");

    private final Quantity quantity;
    private final Slot upper = Slot.number(
            GROUP,
            "upper end",
            "The upper end, or out of how many?",
            "For a range the upper end; for a count out of how many. Otherwise empty.");

    FigurePiece(List<Word> units) {
        quantity = new Quantity(
                Slot.number(
                        GROUP,
                        "number",
                        "The number?",
                        "Digits with decimal point or comma; nothing else. For a range the lower end, for a count the events."),
                Slot.suggested(
                        GROUP,
                        "unit",
                        "In which unit is it printed?",
                        "The unit as printed, such as kPa or mL/min.",
                        units));
    }

    @Override
    public List<Slot> slots() {
        return List.of(KIND, quantity.number(), upper, quantity.unit(), claim);
    }

    Quantity quantity() {
        return quantity;
    }

    @Override
    public List<Slot> asked(Answers soFar) {
        var slots = new ArrayList<Slot>(List.of(KIND));
        var kind = soFar.text(KIND).orElse("");
        if (kind.equals(CLAIM)) {
            slots.add(claim);
        } else if (!kind.isEmpty() && !kind.equals(READ_FROM_FIGURE)) {
            slots.add(quantity.number());
            if (kind.equals(RANGE) || kind.equals(COUNT)) {
                slots.add(upper);
            }
            if (!kind.equals(COUNT)
                    && soFar.text(quantity.number()).filter(NumberText::hasUnit).isEmpty()) {
                slots.add(quantity.unit());
            }
        }
        return slots;
    }

    @Override
    public boolean needs(Slot slot, Answers soFar) {
        return !slot.equals(quantity.unit());
    }

    @Override
    public void write(Draft draft) {
        var kind = draft.text(KIND);
        if (kind.isEmpty() || !KIND.allows(kind.get())) {
            // without a kind, or with one that is refused, the figure has no key to stand behind
            return;
        }
        switch (kind.get()) {
            case CLAIM -> draft.text(claim).ifPresent(t -> draft.put(CLAIM, t, claim));
            case READ_FROM_FIGURE -> {
                // the readings are a piece of their own
            }
            case RANGE -> both(draft, " to ");
            case COUNT -> both(draft, " of ");
            default -> single(draft, kind.get());
        }
    }

    private void single(Draft draft, String kind) {
        draft.answers()
                .get(upper)
                .ifPresent(a -> draft.refuse(Diagnostic.stop(
                        "upper-end-without-range",
                        a.at(),
                        "an upper end stands here, and the kind of figure is %s".formatted(kind),
                        "one of the two is not what the source prints",
                        "choose range or count, or empty this cell")));
        quantity.in(draft).ifPresent(q -> draft.put(kind, q, quantity.number()));
    }

    private void both(Draft draft, String join) {
        var low = draft.number(quantity.number());
        var high = draft.number(upper);
        if (low.isPresent() && high.isPresent()) {
            var unit = draft.text(quantity.unit());
            var kind = join.contains("to") ? RANGE : COUNT;
            draft.put(kind, NumberText.joined(low.get() + join + high.get(), unit), quantity.number());
        }
    }

    @Override
    public void read(Entry.Fields record, Map<Slot, String> cells) {
        KINDS.stream()
                .map(Word::word)
                .filter(k -> record.get(k).isPresent())
                .findFirst()
                .ifPresent(kind -> {
                    cells.put(KIND, kind);
                    record.text(kind).ifPresent(text -> {
                        switch (kind) {
                            case CLAIM -> cells.put(claim, text);
                            case RANGE, COUNT -> split(text, cells);
                            default -> quantity.split(text, cells);
                        }
                    });
                });
    }

    private void split(String text, Map<Slot, String> cells) {
        var ends = text.split("\\s+(?:to|of)\\s+", 2);
        cells.put(quantity.number(), ends[0]);
        if (ends.length == 2) {
            var high = NumberText.split(ends[1]);
            cells.put(upper, high.number());
            if (!high.unit().isEmpty()) {
                cells.put(quantity.unit(), high.unit());
            }
        }
    }

    @Override
    public List<String> paths() {
        // the readings of a figure are the part of another piece
        return KINDS.stream()
                .map(Word::word)
                .filter(k -> !k.equals(READ_FROM_FIGURE))
                .toList();
    }
}
