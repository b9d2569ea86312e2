package comparand.intake;

import comparand.diag.Span;
import comparand.document.record.Entry;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Records nobody would write, each part of it as it may be written: for round trips. */
final class RandomRecords {

    private static final List<String> TEXTS = List.of(
            "7",
            "T2",
            "Quillane 15 | 1.5 L/min | 73.9 ± 4.6",
            "a: b # c",
            "\"quoted\"",
            "Füllvolumen, 61 ml",
            "it's",
            "- dash",
            "1-2",
            "=SUM(A1)",
            "yes",
            "null",
            "007",
            "3/4",
            "two  blanks",
            "{x}",
            "100 %",
            "ends with colon:");

    private final Random random;

    private RandomRecords(Random random) {
        this.random = random;
    }

    static Entry.Fields source(Scope scope, Random random) {
        return new RandomRecords(random).source(scope);
    }

    private Entry.Fields source(Scope scope) {
        var pieces = new SourcePieces(scope);
        var cells = new LinkedHashMap<>(filled(pieces.all()));
        cells.put(SourcePieces.ID, "source-" + random.nextInt(1000));
        var taking = new Taking(Map.of());
        taking.source(pieces, answers(cells));
        var values = new ValuePieces(scope, new Reader("AB", "2026-09-14"), ValuePieces.KnownSource.none());
        int n = random.nextInt(4);
        for (int i = 0; i < n; i++) {
            var row = new LinkedHashMap<>(filled(values.all()));
            row.put(ValuePieces.ID, "V" + i);
            row.put(values.source(), cells.get(SourcePieces.ID));
            taking.value(values, answers(row));
        }
        var taken = taking.taken();
        if (!taken.findings().isEmpty()) {
            throw new AssertionError(String.valueOf(taken.findings()));
        }
        return taken.sources().values().iterator().next();
    }

    private Map<Slot, String> filled(List<Piece> pieces) {
        var cells = new LinkedHashMap<Slot, String>();
        for (var piece : pieces) {
            for (int turn = 0; turn < 8; turn++) {
                // a piece is filled along its own questions, so that it makes sense
                var asked = piece instanceof ConditionPiece
                                || piece instanceof AspectPiece
                                || (piece instanceof QuantityPiece q
                                        && !q.path().startsWith(ReadingPieces.ROOT))
                        ? piece.slots()
                        : piece.asked(answers(cells));
                var next = asked.stream().filter(s -> !cells.containsKey(s)).findFirst();
                if (next.isEmpty() || (turn == 0 && !needsAll(piece) && random.nextInt(3) == 0)) {
                    break;
                }
                cells.put(next.get(), text(next.get()));
            }
        }
        return cells;
    }

    private static boolean needsAll(Piece piece) {
        return piece instanceof FigurePiece || (piece instanceof TextPiece t && t.needed());
    }

    private String text(Slot slot) {
        return switch (slot.kind()) {
            case TEXT ->
                slot.heading().equals("authors")
                        ? "Ardley, J.; \"A, B; C\"; Vellbrook Medical; Penrith,; Elm, T. [non-dropping-particle: van der] [suffix: Jr.]"
                        : slot.heading().endsWith("picture points")
                                ? "357; 358.5"
                                : slot.heading().equals("read by others at")
                                        ? "CD 358 357.5; E. F. 356"
                                        : TEXTS.get(random.nextInt(TEXTS.size()));
            case WORD, SUGGESTED ->
                slot.words().get(random.nextInt(slot.words().size())).word();
            case NUMBER ->
                random.nextInt(2) == 0
                        ? String.valueOf(random.nextInt(500))
                        : random.nextInt(90) + "." + random.nextInt(100);
            case DATE -> "2026-0%d-1%d".formatted(1 + random.nextInt(9), random.nextInt(10));
        };
    }

    private static Answers answers(Map<Slot, String> cells) {
        var answers = new LinkedHashMap<Slot, Answers.Answer>();
        cells.forEach((s, t) -> answers.put(s, new Answers.Answer(t, Span.startOf(s.heading()))));
        return new Answers(answers, Span.startOf("row"));
    }
}
