package comparand.compose.text;

import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Cell;
import comparand.metric.Metric;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.Origin;
import comparand.model.Pairing;
import comparand.model.Standing;
import comparand.model.Summary;
import comparand.stat.Interval;
import comparand.stat.MeanEstimate;
import comparand.stat.Moments;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Table cells and columns, printed alike in every table. */
public final class Cells {

    private final Run run;

    public Cells(Run run) {
        this.run = run;
    }

    public Column text(String heading, double width) {
        return new Column(run.words().say(heading), width, Align.LEFT, false);
    }

    public Column name(String heading, double width) {
        return new Column(run.words().say(heading), width, Align.LEFT, true);
    }

    public Column number(String heading, double width) {
        return new Column(run.words().say(heading), width, Align.RIGHT, false);
    }

    /** What the tool itself calls something. */
    public Cell term(String section, String english) {
        return Cell.words(run.words().term(section, english));
    }

    public Cell metric(Metric metric) {
        return Cell.words(run.terms().metric(metric));
    }

    public Cell word(String key) {
        return Cell.words(run.words().say(key));
    }

    /** What does not apply here. */
    public Cell none() {
        return word("not-applicable");
    }

    public Cell notReported() {
        return word("not-reported-short");
    }

    public Cell unit(Metric metric) {
        return Cell.words(metric.unit().named());
    }

    public Cell n(Comparand comparand) {
        return comparand
                .sizes()
                .independent()
                .map(run.terms()::size)
                .map(Cell::words)
                .orElseGet(this::notReported);
    }

    /** The number that stands for a comparand beside ours, in the brackets of its standing. */
    public Cell centre(Comparand comparand, Standing standing) {
        var centre = standing.isCompared() ? comparand.summary().centre() : uncompared(comparand);
        if (standing == Standing.DIFFERENT_QUANTITY || centre.isEmpty()) {
            return Cell.words(run.summaries().beside(comparand, standing));
        }
        return figure(comparand, centre.getAsDouble(), SummaryText.brackets(standing));
    }

    /** The number of a comparand that is set beside nothing. */
    public Cell alone(Comparand comparand) {
        var centre = uncompared(comparand);
        return centre.isEmpty()
                ? Cell.words(run.summaries().alone(comparand))
                : figure(comparand, centre.getAsDouble(), SummaryText.brackets(Standing.SAME));
    }

    private static OptionalDouble uncompared(Comparand comparand) {
        return SummaryText.median(comparand)
                .map(OptionalDouble::of)
                .orElseGet(() -> comparand.summary().centre());
    }

    private Cell figure(Comparand comparand, double value, SummaryText.Brackets brackets) {
        return run.figures()
                .cell(value, run.figures().of(comparand, value), brackets.before() + sign(comparand), brackets.after());
    }

    private static String sign(Comparand comparand) {
        return comparand.summary() instanceof Summary.Limit limit ? (limit.atLeast() ? "≥\u00a0" : "≤\u00a0") : "";
    }

    public Cell sd(Comparand comparand) {
        return moments(comparand)
                .map(m -> (Cell) run.figures().cell(m.sd(), run.figures().of(comparand, m.mean()), "", ""))
                .orElseGet(() -> comparand.isLocal() ? none() : notReported());
    }

    /** A limit of the 95 % interval of a local mean or estimate. */
    public Cell limit(Comparand comparand, boolean low) {
        return estimate(comparand)
                .map(m -> {
                    var interval = m.interval(Answer.LEVEL);
                    return (Cell) run.figures()
                            .cell(
                                    low ? interval.low() : interval.high(),
                                    run.figures().of(comparand, m.mean()),
                                    "",
                                    "");
                })
                .orElseGet(this::none);
    }

    private static Optional<MeanEstimate> estimate(Comparand comparand) {
        return comparand.summary() instanceof Summary.Estimated e
                ? Optional.of(e.estimate())
                : comparand.summary() instanceof Summary.Sampled s
                        ? Optional.of(s.estimate())
                        : moments(comparand).map(Moments::estimate);
    }

    public Cell difference(Metric metric, double value, Optional<Interval> interval, int decimalsWithout) {
        int decimals = interval.map(i -> run.figures().ofDifference(metric, i)).orElse(decimalsWithout);
        return run.figures().cell(value, decimals, value > 0 ? "+" : "", "");
    }

    public Cell limitOfDifference(Metric metric, Interval interval, boolean low) {
        return run.figures()
                .cell(low ? interval.low() : interval.high(), run.figures().ofDifference(metric, interval), "", "");
    }

    /** A difference with its interval, or the difference of two nominal figures. */
    public Cell differenceInWords(Comparison c) {
        return difference(c.pairing(), c.answer()).map(Cell::words).orElseGet(this::none);
    }

    /** The same as a text, of an answer that a pair has or would have; empty where there is no difference. */
    public Optional<String> difference(Pairing pairing, Answer answer) {
        if (answer instanceof Answer.Nominal nominal) {
            return Optional.of(
                    run.figures().signed(nominal.difference(), run.figures().of(pairing.ours(), nominal.difference())));
        }
        return AnswerText.tested(answer)
                .map(t -> run.figures().difference(pairing.ours().metric(), t));
    }

    /** What a pair is set beside: the source, or the other device. */
    public String against(Pairing pairing) {
        return pairing.purpose() == Pairing.Purpose.LOCAL_AGAINST_PUBLISHED
                ? pairing.theirs()
                        .origin()
                        .fold(p -> p.source().id(), l -> l.study().id())
                : run.names().brief(pairing.theirs().device());
    }

    /** The step or group of a local result. */
    public Cell step(Comparand comparand) {
        var group = comparand.origin().fold(p -> "", Origin.Local::group);
        return group.isEmpty() ? none() : Cell.words(run.terms().group(group));
    }

    private static Optional<Moments> moments(Comparand comparand) {
        return comparand.summary() instanceof Summary.Sampled s
                ? Optional.of(s.moments())
                : comparand.summary() instanceof Summary.EitherSpread e ? Optional.of(e.asSd()) : Optional.empty();
    }

    public Cell standing(Pairing pairing) {
        return Cell.words(run.words().say("standing." + pairing.standing().name()));
    }

    /** {@code 72.4 (4.1); 6 units}, for a page where room is short. */
    public String brief(Comparand comparand) {
        return briefBeside(comparand, Standing.SAME);
    }

    /** The same in the brackets of its standing: {@code [72.4 (4.1)]; 6 units}. */
    public String briefBeside(Comparand comparand, Standing standing) {
        var n = comparand
                .sizes()
                .independent()
                .map(s -> "; " + run.terms().size(s))
                .orElse("");
        return run.summaries().beside(comparand, standing) + (comparand.summary() instanceof Summary.Events ? "" : n);
    }

    /** The row of a table that has none. */
    public List<Cell> nothing(int columns) {
        var row = new ArrayList<Cell>();
        row.add(word("none"));
        while (row.size() < columns) {
            row.add(none());
        }
        return row;
    }
}
