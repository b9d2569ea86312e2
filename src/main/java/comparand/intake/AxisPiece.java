package comparand.intake;

import comparand.document.form.FormList.Word;
import comparand.document.record.Entry;
import comparand.document.record.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** The axis of a figure: how it is divided, and its ticks, so that anybody can read it again. */
final class AxisPiece implements Piece {

    private static final String GROUP = ReadingPieces.GROUP;
    private static final String ROOT = ReadingPieces.ROOT;
    private static final String AXIS = ROOT + "/axis";

    private final Slot scale = Slot.word(
            GROUP,
            "scale",
            "How is the axis divided?",
            "Equal steps, or equal factors.",
            List.of(new Word("linear", "equal steps"), new Word("log10", "equal factors: 1, 10, 100")));

    private final List<Slot> places = IntStream.rangeClosed(1, 3)
            .mapToObj(i -> Slot.number(
                    GROUP,
                    "tick %d, picture point".formatted(i),
                    "At which picture point is tick %d?".formatted(i),
                    (i < 3
                                    ? "Choose ticks near both ends of the axis."
                                    : "A third tick shows whether the axis is straight.")
                            + " The position along the axis, in picture points."))
            .toList();

    private final List<Slot> marks = IntStream.rangeClosed(1, 3)
            .mapToObj(i -> Slot.number(
                    GROUP,
                    "tick %d, value".formatted(i),
                    "Which value is printed at tick %d?".formatted(i),
                    "The number printed at that tick."))
            .toList();

    private final Slot unit;

    AxisPiece(List<Word> units) {
        unit = Slot.suggested(GROUP, "axis, unit", "In which unit is the axis?", "As printed at the axis.", units);
    }

    @Override
    public List<Slot> slots() {
        var slots = new ArrayList<Slot>(List.of(scale));
        for (int i = 0; i < 3; i++) {
            slots.add(places.get(i));
            slots.add(marks.get(i));
        }
        slots.add(unit);
        return slots;
    }

    @Override
    public List<Slot> asked(Answers soFar) {
        if (!soFar.is(FigurePiece.KIND, ROOT)) {
            return List.of();
        }
        var slots = new ArrayList<>(slots());
        if (soFar.text(places.get(2)).isEmpty()) {
            slots.remove(marks.get(2));
        }
        return slots;
    }

    @Override
    public boolean needs(Slot slot, Answers soFar) {
        return !slot.equals(places.get(2));
    }

    @Override
    public void write(Draft draft) {
        draft.text(scale).ifPresent(s -> draft.put(ROOT + "/scale", s, scale));
        var of = draft.text(unit);
        var ticks = new ArrayList<Entry>();
        for (int i = 0; i < 3; i++) {
            var at = draft.number(places.get(i));
            var is = draft.number(marks.get(i));
            if (at.isPresent() || is.isPresent()) {
                var tick = new ArrayList<Field>();
                at.ifPresent(a -> tick.add(Field.of("at", a)));
                is.ifPresent(m -> tick.add(Field.of("is", NumberText.joined(m, of))));
                ticks.add(new Entry.Fields(tick));
            }
        }
        if (!ticks.isEmpty()) {
            draft.put(AXIS, new Entry.Items(ticks), draft.answers().at(places.get(0)));
        }
    }

    @Override
    public void read(Entry.Fields record, Map<Slot, String> cells) {
        Paths.text(record, ROOT + "/scale").ifPresent(s -> cells.put(scale, s));
        var ticks = items(record, AXIS);
        for (int i = 0; i < Math.min(3, ticks.size()); i++) {
            if (ticks.get(i) instanceof Entry.Fields tick) {
                int at = i;
                tick.text("at").ifPresent(a -> cells.put(places.get(at), a));
                tick.text("is").map(NumberText::split).ifPresent(is -> {
                    cells.put(marks.get(at), is.number());
                    if (!is.unit().isEmpty()) {
                        cells.put(unit, is.unit());
                    }
                });
            }
        }
    }

    private static List<Entry> items(Entry.Fields record, String path) {
        return Paths.at(record, path)
                .map(e -> e instanceof Entry.Items i ? i.list() : List.<Entry>of())
                .orElse(List.of());
    }

    @Override
    public List<String> paths() {
        return List.of(ROOT + "/scale", AXIS);
    }
}
