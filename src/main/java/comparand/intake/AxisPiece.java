package comparand.intake;

import comparand.document.form.FormList.Word;
import comparand.document.record.Entry;
import comparand.document.record.Field;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A value read from a figure: ticks of the axis, and the places read, so that anybody can read it again. */
final class AxisPiece implements Piece {

    static final String GROUP = "Reading from a figure";
    private static final String ROOT = FigurePiece.READ_FROM_FIGURE;
    private static final String POINTS = ROOT + "/points";
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

    private final Slot points = Slot.text(
            GROUP,
            "read at, picture points",
            "At which picture point is the value? Two readings with ; between them are better than one.",
            "The place of the mark along the same axis. Read it twice and write both with ; between them.");

    private final Slot uncertainty = Slot.number(
            GROUP,
            "uncertainty, picture points",
            "By how many picture points may a reading be off?",
            "How far off a reading may be; 1 to 2 picture points on a sharp figure.");

    private final Slot shows = Slot.word(
            GROUP,
            "mark shows",
            "What does the mark stand for?",
            "What the legend says the mark is.",
            List.of(new Word("mean", "a mean"), new Word("median", "a median"), new Word("value", "a single figure")));

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
        slots.addAll(List.of(unit, points, uncertainty, shows));
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
        return !slot.equals(places.get(2)) && !slot.equals(shows);
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
        draft.answers().get(points).ifPresent(a -> points(draft, a));
        draft.number(uncertainty).ifPresent(u -> draft.put(ROOT + "/point-uncertainty", u, uncertainty));
        draft.text(shows).ifPresent(s -> draft.put(ROOT + "/shows", s, shows));
    }

    private static void points(Draft draft, Answers.Answer answer) {
        var read = Arrays.stream(answer.text().split(";", -1))
                .filter(p -> !p.isBlank())
                .map(p -> NumberText.read(p.strip(), draft.sign()))
                .toList();
        if (read.stream().anyMatch(Optional::isEmpty)) {
            draft.refuse(NumberText.refused(answer));
        } else {
            draft.put(
                    POINTS,
                    new Entry.Items(read.stream()
                            .flatMap(Optional::stream)
                            .<Entry>map(Entry::words)
                            .toList()),
                    answer.at());
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
        var read = items(record, POINTS);
        if (!read.isEmpty()) {
            cells.put(
                    points,
                    read.stream()
                            .map(e -> e instanceof Entry.Words w ? w.text() : "")
                            .collect(Collectors.joining("; ")));
        }
        Paths.text(record, ROOT + "/point-uncertainty").ifPresent(u -> cells.put(uncertainty, u));
        Paths.text(record, ROOT + "/shows").ifPresent(s -> cells.put(shows, s));
    }

    private static List<Entry> items(Entry.Fields record, String path) {
        return Paths.at(record, path)
                .map(e -> e instanceof Entry.Items i ? i.list() : List.<Entry>of())
                .orElse(List.of());
    }

    @Override
    public List<String> paths() {
        return List.of(ROOT + "/scale", AXIS, POINTS, ROOT + "/point-uncertainty", ROOT + "/shows");
    }
}
