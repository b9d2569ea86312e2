package comparand.compose.table;

import comparand.compose.results.PairResults;
import comparand.compose.text.AnswerText;
import comparand.compose.text.Cells;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Remarks;
import comparand.compose.text.Run;
import comparand.compose.text.SummaryText;
import comparand.diag.Located;
import comparand.document.Block.Column;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.metric.Metric;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.Label;
import comparand.model.Standing;
import comparand.model.Summary;
import comparand.stat.Interval;
import comparand.stat.RatioOfMeans;
import comparand.unit.Rounding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The sheet that sets values side by side, pair by pair. */
final class CompareSheet {

    private final Run run;
    private final Cells cells;

    CompareSheet(Run run) {
        this.run = run;
        this.cells = new Cells(run);
    }

    /** The first columns are printed, one page wide; what follows is for the screen. */
    private static final int COMPARE_ON_PAPER = 16;

    Table table() {
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
                cells.number("col.holds-above", 10),
                cells.number("col.holds-below", 10),
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
        var holds = tested.flatMap(t -> Remarks.holds(t, comparison.margin()));
        var interval = tested.map(Answer.Tested::interval);
        var remarks = run.remarks().of(comparison);
        return List.of(
                cells.metric(metric),
                cells.unit(metric),
                Cell.words(run.names().brief(ours.device())),
                cells.step(ours),
                Cell.words(cells.against(pairing)),
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
                        .fold(
                                p -> cells.term(
                                        "funding", p.source().funding().value().spelling()),
                                l -> cells.none()),
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
                holds.filter(m -> m.above() > 0)
                        .map(m -> margin(metric, m.above(), tested))
                        .orElseGet(cells::none),
                holds.filter(m -> Double.isFinite(m.below()))
                        .map(m -> margin(metric, m.below(), tested))
                        .orElseGet(cells::none),
                remarks.isEmpty() ? cells.word("none") : Cell.words(String.join(". ", remarks)),
                Cell.words(run.conditions().line(pairing)),
                Cell.verbatim(ours.id()),
                Cell.verbatim(theirs.id()));
    }

    private Cell figureOf(Comparand comparand) {
        return cells.centre(comparand, comparand.isConverted() ? Standing.SAME_AFTER_CONVERSION : Standing.SAME);
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

    /** A margin to the digits of the difference. */
    private Cell margin(Metric metric, double margin, Optional<Answer.Tested> tested) {
        return run.figures()
                .cell(
                        margin,
                        run.figures().ofDifference(metric, tested.orElseThrow().interval()),
                        "",
                        "");
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
        var kind = SummaryText.values(comparand).get(0).spreadKind();
        boolean estimated = comparand.summary() instanceof Summary.Sampled s && s.label() != Label.REPORTED;
        var name = run.words().term("spread", kind.spelling());
        return estimated ? run.words().say("spread-converted", "spread", name) : name;
    }
}
