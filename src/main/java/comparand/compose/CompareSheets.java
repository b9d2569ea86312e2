package comparand.compose;

import comparand.diag.Located;
import comparand.document.Block.Column;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.metric.Metric;
import comparand.metric.Role;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.ConditionVerdict;
import comparand.model.ConditionVerdict.Mark;
import comparand.model.Label;
import comparand.model.Pairing;
import comparand.model.Standing;
import comparand.model.Summary;
import comparand.model.library.SpreadKind;
import comparand.stat.Interval;
import comparand.stat.RatioOfMeans;
import comparand.unit.Rounding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The sheets that set values side by side: Compare, Conditions, Not comparable. */
final class CompareSheets {

    private static final int CONDITIONS_ON_PAPER = 11;

    private final Run run;
    private final Cells cells;

    CompareSheets(Run run) {
        this.run = run;
        this.cells = new Cells(run);
    }

    /** The first columns are printed, one page wide; what follows is for the screen. */
    private static final int COMPARE_ON_PAPER = 16;

    Table compare() {
        List<Column> columns = List.of(
                cells.name("col.metric", 16),
                cells.text("col.unit", 9),
                cells.name("col.device", 10),
                cells.text("col.step", 11),
                cells.text("col.against", 14),
                cells.number("col.mean", 8),
                cells.number("col.sd", 7),
                cells.text("col.n", 8),
                cells.text("col.printed", 17),
                cells.number("col.footing", 9),
                cells.text("col.their-n", 8),
                cells.number("col.difference", 10),
                cells.number("col.difference-low", 9),
                cells.number("col.difference-high", 9),
                cells.text("col.answer", 44),
                cells.text("col.standing", 12),
                cells.text("col.locator", 21),
                cells.text("col.funding", 13),
                cells.text("col.question", 24),
                cells.number("col.low", 9),
                cells.number("col.high", 9),
                cells.number("col.their-spread", 9),
                cells.text("col.their-kind", 12),
                cells.number("col.adjusted", 10),
                cells.number("col.narrow-low", 9),
                cells.number("col.narrow-high", 9),
                cells.number("col.ratio", 8),
                cells.number("col.ratio-low", 9),
                cells.number("col.ratio-high", 9),
                cells.text("col.reference-t", 14),
                cells.text("col.remarks", 34),
                cells.text("col.conditions", 50),
                cells.text("col.id", 44),
                cells.text("col.their-id", 44));
        var rows = new ArrayList<List<Cell>>();
        run.questions()
                .forEach((question, metric) ->
                        run.comparisons(metric).forEach(c -> rows.add(row(question.asks(), metric, c))));
        return new Table("Compare", "", columns, rows, List.of(), COMPARE_ON_PAPER);
    }

    private List<Cell> row(Located<String> asks, Metric metric, Comparison comparison) {
        var pairing = comparison.pairing();
        var ours = pairing.ours();
        var theirs = pairing.theirs();
        var tested = AnswerText.tested(comparison.answer());
        var interval = tested.map(Answer.Tested::interval);
        var remarks = run.remarks().of(comparison);
        return List.of(
                Cell.words(metric.name()),
                cells.unit(metric),
                Cell.words(run.names().brief(ours.device())),
                cells.step(ours),
                Cell.words(against(pairing)),
                ours.isLocal() ? cells.centre(ours, Standing.SAME) : figureOf(ours),
                cells.sd(ours),
                cells.n(ours),
                theirs.isLocal() ? cells.none() : Cell.words(SummaryText.printed(theirs)),
                cells.centre(theirs, pairing.standing()),
                cells.n(theirs),
                difference(comparison, metric),
                interval.map(i -> cells.limitOfDifference(metric, i, true)).orElseGet(cells::none),
                interval.map(i -> cells.limitOfDifference(metric, i, false)).orElseGet(cells::none),
                Cell.words(ConditionLine.upperFirst(run.answers().of(comparison))),
                cells.standing(pairing),
                Cell.words(run.names().locator(theirs)),
                theirs.origin()
                        .fold(p -> Cell.words(p.source().funding().value().spelling()), l -> cells.none()),
                Cell.words(asks.value()),
                cells.limit(ours, true),
                cells.limit(ours, false),
                cells.sd(theirs),
                Cell.words(spreadKind(theirs)),
                comparison.adjustedP().isPresent()
                        ? adjusted(comparison.adjustedP().getAsDouble())
                        : cells.none(),
                tested.map(t -> cells.limitOfDifference(metric, narrow(t), true))
                        .orElseGet(cells::none),
                tested.map(t -> cells.limitOfDifference(metric, narrow(t), false))
                        .orElseGet(cells::none),
                ratio(tested, RatioOfMeans::value),
                ratio(tested, r -> r.interval(Answer.LEVEL).low()),
                ratio(tested, r -> r.interval(Answer.LEVEL).high()),
                tested.map(t -> cells.word(
                                t.difference().cautious().isPresent() ? "reference.cautious" : "reference.student"))
                        .orElseGet(cells::none),
                remarks.isEmpty() ? cells.word("none") : Cell.words(String.join(". ", remarks)),
                Cell.words(run.conditions().line(pairing)),
                Cell.verbatim(ours.id()),
                Cell.verbatim(theirs.id()));
    }

    private Cell figureOf(Comparand comparand) {
        return cells.centre(comparand, comparand.isConverted() ? Standing.SAME_AFTER_CONVERSION : Standing.SAME);
    }

    private String against(Pairing pairing) {
        return pairing.purpose() == Pairing.Purpose.LOCAL_AGAINST_PUBLISHED
                ? pairing.theirs()
                        .origin()
                        .fold(p -> p.source().id(), l -> l.study().id())
                : run.names().brief(pairing.theirs().device());
    }

    private Cell difference(Comparison comparison, Metric metric) {
        if (comparison.answer() instanceof Answer.Nominal nominal) {
            return cells.difference(
                    metric,
                    nominal.difference(),
                    Optional.<Interval>empty(),
                    run.figures().of(comparison.pairing().ours(), nominal.difference()));
        }
        return AnswerText.tested(comparison.answer())
                .map(t -> cells.difference(metric, t.difference().value(), Optional.of(t.interval()), 0))
                .orElseGet(cells::none);
    }

    /** Inside the margin where two one-sided tests at 5 % reject. */
    private static Interval narrow(Answer.Tested tested) {
        return tested.difference().interval(PairResults.NARROW);
    }

    /** Of the two means, to the digits that the width of its interval deserves. */
    private Cell ratio(Optional<Answer.Tested> tested, ToDoubleFunction<RatioOfMeans> number) {
        return tested.flatMap(Answer.Tested::ratio)
                .map(r -> (Cell) run.figures()
                        .cell(
                                number.applyAsDouble(r),
                                Rounding.decimalsFor(r.interval(Answer.LEVEL).halfWidth(), 2),
                                "",
                                ""))
                .orElseGet(cells::none);
    }

    private Cell adjusted(double p) {
        return run.figures().pCell(p);
    }

    private String spreadKind(Comparand comparand) {
        if (comparand.isLocal()) {
            return run.words().say("local");
        }
        var kind = SummaryText.values(comparand)
                .get(0)
                .spread()
                .map(s -> s.kind().value())
                .orElse(SpreadKind.NOT_REPORTED);
        boolean estimated = comparand.summary() instanceof Summary.Sampled s && s.label() != Label.REPORTED;
        return kind.spelling() + (estimated ? ", converted" : "");
    }

    Table conditions() {
        List<Column> columns = List.of(
                cells.name("col.metric", 22),
                cells.name("col.device", 11),
                cells.text("col.step", 14),
                cells.text("col.against", 17),
                cells.name("col.condition", 26),
                cells.text("col.ours", 22),
                cells.text("col.theirs", 22),
                cells.text("col.tolerance", 17),
                cells.text("col.role", 10),
                cells.text("col.verdict", 14),
                cells.text("col.effect", 22),
                cells.text("col.because", 44),
                cells.text("col.id", 44),
                cells.text("col.their-id", 44));
        var rows = new ArrayList<List<Cell>>();
        run.questions()
                .forEach((question, metric) -> run.comparisons(metric)
                        .forEach(c ->
                                c.pairing().verdicts().forEach(v -> rows.add(condition(metric, c.pairing(), v)))));
        return new Table("Conditions", "", columns, rows, List.of(), CONDITIONS_ON_PAPER);
    }

    private List<Cell> condition(Metric metric, Pairing pairing, ConditionVerdict v) {
        boolean differs = v.mark() == Mark.DIFFERS;
        return List.of(
                Cell.words(metric.name()),
                Cell.words(run.names().brief(pairing.ours().device())),
                cells.step(pairing.ours()),
                Cell.words(against(pairing)),
                Cell.words(v.name()),
                Cell.words(v.ours().isBlank() ? "1" : v.ours()),
                Cell.words(v.theirs().isBlank() ? "1" : v.theirs()),
                v.tolerance().isEmpty() ? cells.none() : Cell.words(v.tolerance()),
                cells.word(v.role() == Role.QUALIFIES ? "role.qualifies" : "role.decides"),
                cells.word("mark." + v.mark().name()),
                differs ? cells.word("effect." + v.effect().name()) : cells.none(),
                differs && !v.because().isBlank() ? Cell.words(v.because()) : cells.none(),
                Cell.verbatim(pairing.ours().id()),
                Cell.verbatim(pairing.theirs().id()));
    }

    Table notComparable() {
        List<Column> columns = List.of(
                cells.name("col.metric", 20),
                cells.name("col.device", 11),
                cells.text("col.step", 15),
                cells.text("col.ours", 14),
                cells.text("col.against", 17),
                cells.text("col.printed", 19),
                cells.number("col.footing", 10),
                cells.text("col.why", 36),
                cells.text("col.effect", 40),
                cells.text("col.would", 38),
                cells.text("col.locator", 21));
        var rows = new ArrayList<List<Cell>>();
        run.questions()
                .forEach((question, metric) -> run.comparisons(metric).stream()
                        .filter(c -> !c.pairing().standing().isCompared())
                        .forEach(c -> rows.add(notCompared(metric, c.pairing()))));
        run.compared().matched().unpaired().forEach(c -> rows.add(unpaired(c)));
        return new Table("NotComparable", "", columns, rows, List.of());
    }

    private List<Cell> notCompared(Metric metric, Pairing pairing) {
        var distortions = run.conditions().distortions(pairing);
        return List.of(
                Cell.words(metric.name()),
                Cell.words(run.names().brief(pairing.ours().device())),
                cells.step(pairing.ours()),
                Cell.words(run.summaries().withUnit(pairing.ours())),
                Cell.words(against(pairing)),
                pairing.theirs().isLocal() ? cells.none() : Cell.words(SummaryText.printed(pairing.theirs())),
                cells.centre(pairing.theirs(), pairing.standing()),
                Cell.words(ConditionLine.upperFirst(run.conditions().why(pairing))),
                distortions.isEmpty() ? cells.word("distortion.open") : Cell.words(String.join(" ", distortions)),
                Cell.words(ConditionLine.upperFirst(run.conditions().toMakeComparable(pairing))),
                Cell.words(run.names().locator(pairing.theirs())));
    }

    private List<Cell> unpaired(Comparand comparand) {
        return List.of(
                Cell.words(comparand.metric().name()),
                Cell.words(run.names().brief(comparand.device())),
                cells.none(),
                cells.none(),
                Cell.words(comparand
                        .origin()
                        .fold(p -> p.source().id(), l -> l.study().id())),
                Cell.words(SummaryText.printed(comparand)),
                cells.alone(comparand),
                Cell.words(run.unpaired(comparand)),
                cells.none(),
                Cell.words(ConditionLine.upperFirst(run.toPair(comparand))),
                Cell.words(run.names().locator(comparand)));
    }
}
