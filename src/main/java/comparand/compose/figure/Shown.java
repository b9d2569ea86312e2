package comparand.compose.figure;

import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.compose.text.SummaryText;
import comparand.document.chart.Mark;
import comparand.document.chart.Series.Extent;
import comparand.metric.Metric;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Origin;
import comparand.model.Standing;
import comparand.model.Summary;
import comparand.stat.Interval;
import java.util.Optional;
import java.util.OptionalDouble;

/** A comparand in a figure: its number, its interval, its mark and what is written beside it. */
final class Shown {

    private final Run run;

    Shown(Run run) {
        this.run = run;
    }

    /** Where it is drawn; a median that is not compared stays where it was printed. */
    static OptionalDouble place(Comparand c, Standing standing) {
        return standing.isCompared()
                ? c.summary().centre()
                : SummaryText.median(c)
                        .map(OptionalDouble::of)
                        .orElseGet(() -> c.summary().centre());
    }

    /** The 95 % interval of a mean or estimate whose spread is known for what it is. */
    static Optional<Interval> interval(Comparand c) {
        return c.summary() instanceof Summary.Sampled s
                ? Optional.of(s.estimate().interval(Answer.LEVEL))
                : c.summary() instanceof Summary.Estimated e
                        ? Optional.of(e.estimate().interval(Answer.LEVEL))
                        : Optional.empty();
    }

    static Optional<Extent> extent(Interval interval) {
        return Optional.of(new Extent(interval.low(), interval.high()));
    }

    static Optional<Extent> extent(Comparand c) {
        return interval(c).flatMap(Shown::extent);
    }

    static Mark mark(Standing standing) {
        return switch (standing) {
            case SAME -> Mark.FILLED_SQUARE;
            case SAME_AFTER_CONVERSION -> Mark.FILLED_SQUARE_WITH_TAIL;
            case CONDITIONS_DIFFER, DIFFERENT_QUANTITY -> Mark.HOLLOW_DIAMOND;
            case NOT_REPORTED -> Mark.HOLLOW_DIAMOND_ASKED;
        };
    }

    /** What sets a local result apart from others of its device: step or centre; empty where nothing does. */
    private String group(Comparand c) {
        return run.terms().group(c.origin().fold(p -> "", Origin.Local::group));
    }

    /** The name of a row: the device, and below it what it was measured at and how many stand behind it. */
    String row(Comparand c) {
        var below = below(c);
        return run.names().brief(c.device()) + (below.isEmpty() ? "" : "\n" + below);
    }

    /** The same in one line. */
    String inLine(Comparand c) {
        return row(c).replace("\n", ", ");
    }

    /** What it was measured at, and how many stand behind it. */
    String below(Comparand c) {
        var group = group(c);
        var n = c.sizes()
                .independent()
                .map(s -> run.terms().size(s).replace(' ', '\u00a0'))
                .orElse("");
        return group.isEmpty() ? n : n.isEmpty() ? hold(group) : hold(group) + ", " + n;
    }

    private static String hold(String group) {
        return group.replaceAll("(\\d) (\\S+)", "$1\u00a0$2");
    }

    /** The printed number of a local mean, without its spread: the figure draws the interval. */
    String mean(Comparand c) {
        double at = c.summary().centre().orElseThrow();
        return run.figures().number(at, run.figures().of(c, at));
    }

    /** The interval with the decimals of the number it belongs to. */
    Optional<String> intervalText(Comparand c) {
        return interval(c)
                .map(i -> run.figures()
                        .range(i, run.figures().of(c, c.summary().centre().orElseThrow())));
    }

    /** As it stands beside ours, in the brackets of its standing, and where it was found. */
    String beside(Comparand c, Standing standing) {
        return found(c, run.summaries().beside(c, standing));
    }

    /** The same where labels crowd; what was read from a figure is named below it. */
    String label(Comparand c, Standing standing) {
        return found(c, run.summaries().besideInShort(c, standing));
    }

    private String found(Comparand c, String value) {
        return run.words()
                .say(
                        "figure.beside",
                        "value",
                        value.replace(' ', '\u00a0'),
                        "locator",
                        run.names().locator(c));
    }

    /** The metric with its unit, as the title of an axis. */
    String axis(Metric metric) {
        var name = ConditionLine.upperFirst(run.terms().metric(metric));
        return metric.unit().spelling().isEmpty()
                ? name
                : name + ", " + metric.unit().spelling();
    }
}
