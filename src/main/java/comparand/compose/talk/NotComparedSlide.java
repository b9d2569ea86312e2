package comparand.compose.talk;

import comparand.compose.talk.Draft.Asked;
import comparand.compose.text.Cells;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.talk.Part;
import comparand.metric.Effect;
import comparand.model.Circumstance;
import comparand.model.Comparison;
import comparand.model.ConditionVerdict;
import comparand.model.ConditionVerdict.Mark;
import comparand.model.ConditionVerdict.Subject;
import comparand.model.Pairing;
import comparand.model.Pairing.Purpose;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What was not compared: they, we, and where that would move their number. The largest mismatches first. */
final class NotComparedSlide {

    static final String ID = "not-compared";

    private static final int ROWS = 3;

    private final Run run;
    private final Cells cells;
    private final Speeches speeches;

    NotComparedSlide(Run run, Speeches speeches) {
        this.run = run;
        this.cells = new Cells(run);
        this.speeches = speeches;
    }

    /** A pair with the condition that sets it apart most. */
    private record Mismatch(Comparison pair, ConditionVerdict condition, double size) {}

    Draft slide() {
        var mismatches = run.compared().comparisons().stream()
                .filter(c -> c.pairing().purpose() == Purpose.LOCAL_AGAINST_PUBLISHED)
                .map(this::largest)
                .flatMap(Optional::stream)
                .sorted(Comparator.comparingDouble(Mismatch::size).reversed())
                .limit(ROWS)
                .toList();
        var pairs = mismatches.stream().map(Mismatch::pair).toList();
        int all = run.compared().comparisons().size();
        long compared = run.compared().comparisons().stream()
                .filter(c -> c.pairing().standing().isCompared())
                .count();
        var strip =
                say("talk.strip.not-compared", "shown", String.valueOf(all - compared), "pairs", String.valueOf(all));
        var asked = new FloorQuestions(run).trails(pairs);
        return mismatches.isEmpty()
                ? new Draft(
                        ID,
                        say("talk.title.not-compared.none"),
                        List.of(new Part.Points(List.of(say("talk.not-compared.none")))),
                        strip,
                        speeches.plain(
                                say("talk.say.not-compared"),
                                List.of(new Asked(say("talk.ask.methods"), BackupSlides.METHODS))),
                        false,
                        List.of())
                : new Draft(
                        ID,
                        say("talk.title.not-compared"),
                        List.of(new Part.Grid(table(mismatches))),
                        strip,
                        speeches.of(List.of(say("talk.say.not-compared")), pairs, asked),
                        false,
                        pairs.stream().map(c -> c.pairing().theirs()).toList());
    }

    private Table table(List<Mismatch> mismatches) {
        return new Table(
                "NotCompared",
                say("talk.title.not-compared"),
                List.of(
                        cells.name("talk.col.other", 36),
                        cells.text("talk.col.they", 22),
                        cells.text("talk.col.we", 22),
                        cells.text("talk.col.looks", 20)),
                mismatches.stream().map(this::row).toList(),
                List.of());
    }

    private List<Cell> row(Mismatch m) {
        var theirs = m.pair().pairing().theirs();
        var v = m.condition();
        return List.of(
                Cell.words(say(
                        "talk.other",
                        "metric",
                        ConditionLine.upperFirst(
                                run.terms().metric(m.pair().pairing().ours().metric())),
                        "device",
                        run.names().brief(theirs.device()),
                        "locator",
                        run.names().locator(theirs))),
                Cell.words(
                        v.of() == Subject.CONDITION
                                ? say("talk.they", "condition", v.name(), "value", v.theirs())
                                : v.theirs()),
                Cell.words(
                        v.of() == Subject.CONDITION
                                ? say("talk.they", "condition", v.name(), "value", v.ours())
                                : v.ours()),
                Cell.words(looks(v)));
    }

    private String looks(ConditionVerdict v) {
        if (v.of() != Subject.CONDITION) {
            return say("talk.looks.quantity");
        }
        boolean explained = !v.because().isBlank();
        return v.effect() == Effect.RAISES && explained
                ? say("talk.looks.higher")
                : v.effect() == Effect.LOWERS && explained
                        ? say("talk.looks.lower")
                        : v.effect() == Effect.NONE ? say("talk.looks.none") : say("talk.looks.unknown");
    }

    /** The condition that differs most: by the ratio of its two values, of which words and other quantities have none. */
    private Optional<Mismatch> largest(Comparison c) {
        return run.conditions().said(c.pairing()).stream()
                .filter(v -> v.decidesAgainst() && v.mark() == Mark.DIFFERS && v.of() != Subject.LABEL)
                .map(v -> new Mismatch(c, v, size(c.pairing(), v)))
                .max(Comparator.comparingDouble(Mismatch::size));
    }

    /** Logarithm of the ratio; a difference in kind is larger than any that a factor of three could bridge. */
    private static double size(Pairing pairing, ConditionVerdict v) {
        return pairing.ours().condition(v.id()) instanceof Circumstance.Amount ours
                        && pairing.theirs().condition(v.id()) instanceof Circumstance.Amount theirs
                        && ours.value() > 0
                        && theirs.value() > 0
                ? Math.abs(Math.log(ours.value() / theirs.value()))
                : v.of() == Subject.CONDITION ? 0 : Math.log(3);
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
