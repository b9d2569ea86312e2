package comparand.compose.talk;

import comparand.compose.text.Run;
import comparand.metric.Metric;
import comparand.model.Answer;
import comparand.model.Comparison;
import comparand.model.Margin;
import comparand.stat.Interval;
import comparand.unit.Rounding;
import java.util.stream.DoubleStream;

/**
 * Differences as slides print them: two significant digits, the limits with the same decimals; one decimal more where a
 * limit would be printed as zero or as the margin and is neither, and never more than a table has.
 */
final class SlideNumbers {

    private static final int DIGITS = 2;

    private final Run run;

    SlideNumbers(Run run) {
        this.run = run;
    }

    int decimals(Comparison c, Answer.Tested tested) {
        var metric = c.pairing().ours().metric();
        int most = run.figures().ofDifference(metric, tested.interval());
        int decimals = Math.min(most, Rounding.decimalsFor(tested.difference().value(), DIGITS));
        double margin = c.margin().map(Margin::value).orElse(0.0);
        while (decimals < most
                && (meets(tested.interval(), 0, decimals) || meets(tested.interval(), margin, decimals))) {
            decimals++;
        }
        return decimals;
    }

    /** Whether a limit that is not this number would be printed as if it were. */
    private static boolean meets(Interval interval, double number, int decimals) {
        return DoubleStream.of(interval.low(), interval.high())
                .map(Math::abs)
                .anyMatch(x -> x != number && Rounding.halfUp(x, decimals).doubleValue() == number);
    }

    /** {@code +17}. */
    String signed(Comparison c, Answer.Tested tested) {
        return run.figures().signed(tested.difference().value(), decimals(c, tested));
    }

    String interval(Comparison c, Answer.Tested tested) {
        return run.figures().range(tested.interval(), decimals(c, tested));
    }

    /** {@code +17 (13 to 22)}; of two stated figures their difference alone. */
    String difference(Comparison c) {
        if (c.answer() instanceof Answer.Nominal n) {
            return run.figures()
                    .signed(n.difference(), run.figures().of(c.pairing().ours(), n.difference()));
        }
        return Firmness.tested(c)
                .map(t -> run.words().say("talk.difference", "value", signed(c, t), "interval", interval(c, t)))
                .orElseGet(() -> run.words().say("not-applicable"));
    }

    /** {@code 17 mmHg}: how much, without direction. */
    String amount(Comparison c) {
        var metric = c.pairing().ours().metric();
        if (c.answer() instanceof Answer.Nominal n) {
            double amount = Math.abs(n.difference());
            return withUnit(
                    run.figures().number(amount, run.figures().of(c.pairing().ours(), amount)), metric);
        }
        return Firmness.tested(c)
                .map(t -> withUnit(run.figures().number(Math.abs(t.difference().value()), decimals(c, t)), metric))
                .orElse("");
    }

    /** Six digits: what a person means who asks for the unrounded number. */
    String unrounded(double value) {
        var six = Rounding.significant(value, 6);
        return run.figures().number(value, Math.max(0, six.scale()));
    }

    String withUnit(String number, Metric metric) {
        return run.figures().withDifferenceUnit(number, metric).replace(' ', '\u00a0');
    }
}
