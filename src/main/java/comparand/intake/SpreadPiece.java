package comparand.intake;

import comparand.document.form.FormList.Word;
import comparand.document.record.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The spread printed beside a mean or median: its kind, and one figure or two ends. */
final class SpreadPiece implements Piece {

    private static final String GROUP = "Spread and number";
    private static final String OF = "spread/of";
    private static final Set<String> TWO_ENDS = Set.of("ci95", "iqr", "range");
    private static final Set<String> WITH_SPREAD = Set.of("mean", "median", "value", FigurePiece.READ_FROM_FIGURE);

    private final Slot kind = Slot.word(
            GROUP,
            "kind of spread",
            "What does the source call the spread?",
            "SD and SE differ by the root of n. If the source prints a ± and does not say which, choose: not stated.",
            List.of(
                    new Word("sd", "standard deviation"),
                    new Word("se", "standard error of the mean"),
                    new Word("ci95", "95 % confidence interval: two ends"),
                    new Word("iqr", "quartiles: two ends"),
                    new Word("range", "smallest and largest: two ends"),
                    new Word("not stated", "a ± that is printed without saying what it is"),
                    new Word("not reported", "no spread is printed")));

    private final Quantity from;
    private final Slot upTo = Slot.number(
            GROUP, "spread, upper end", "The upper end?", "Only where two ends are printed, such as quartiles.");

    SpreadPiece(List<Word> units) {
        from = new Quantity(
                Slot.number(
                        GROUP,
                        "spread",
                        "The spread (of two ends, the lower)?",
                        "The figure as printed; of two ends the lower one."),
                Slot.suggested(
                        GROUP,
                        "spread, unit",
                        "In which unit is the spread printed?",
                        "Most often that of the figure; for a mean in % it is percentage points.",
                        units));
    }

    @Override
    public List<Slot> slots() {
        return List.of(kind, from.number(), upTo, from.unit());
    }

    @Override
    public List<Slot> asked(Answers soFar) {
        if (soFar.text(FigurePiece.KIND).filter(WITH_SPREAD::contains).isEmpty()) {
            return List.of();
        }
        var slots = new ArrayList<Slot>(List.of(kind));
        var answered = soFar.text(kind).orElse("not reported");
        // the figures of an error bar are in the picture
        if (!answered.equals("not reported")
                && soFar.text(ReadingPieces.ERROR_BAR).isEmpty()) {
            slots.add(from.number());
            if (TWO_ENDS.contains(answered)) {
                slots.add(upTo);
            }
            slots.add(from.unit());
        }
        return slots;
    }

    @Override
    public boolean needs(Slot slot, Answers soFar) {
        return !slot.equals(from.unit());
    }

    @Override
    public void write(Draft draft) {
        draft.text(kind).ifPresent(k -> draft.put("spread/kind", k, kind));
        if (draft.text(upTo).isPresent()) {
            var low = draft.number(from.number());
            var high = draft.number(upTo);
            var unit = draft.text(from.unit());
            if (low.isPresent() && high.isPresent()) {
                draft.put(
                        OF,
                        new Entry.Items(List.of(
                                Entry.words(NumberText.joined(low.get(), unit)),
                                Entry.words(NumberText.joined(high.get(), unit)))),
                        draft.answers().at(from.number()));
            }
        } else {
            from.in(draft).ifPresent(q -> draft.put(OF, q, from.number()));
        }
    }

    @Override
    public void read(Entry.Fields record, Map<Slot, String> cells) {
        Paths.text(record, "spread/kind").ifPresent(k -> cells.put(kind, k));
        Paths.at(record, OF).ifPresent(e -> {
            if (e instanceof Entry.Words words) {
                from.split(words.text(), cells);
            } else if (e instanceof Entry.Items items && items.list().size() == 2) {
                from.split(word(items, 0).orElse(""), cells);
                cells.put(upTo, NumberText.split(word(items, 1).orElse("")).number());
            }
        });
    }

    private static Optional<String> word(Entry.Items items, int at) {
        return items.list().get(at) instanceof Entry.Words w ? Optional.of(w.text()) : Optional.empty();
    }

    @Override
    public List<String> paths() {
        return List.of("spread/kind", OF);
    }
}
