package comparand.compose.text;

import comparand.document.Cell;
import comparand.metric.Metric;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Origin;
import comparand.model.Step;
import comparand.model.Summary;
import comparand.model.library.ValueRecord;
import comparand.stat.Interval;
import comparand.unit.Printed;
import comparand.unit.Rounding;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * How numbers are printed, in one place.
 *
 * <ul>
 *   <li>A local mean has as many decimals as show two significant digits of its standard deviation.
 *   <li>A published number keeps the digits of its source; converted, it has as many significant digits as the printed
 *       one, one more if only the
 *       converted one starts with a 1.
 *   <li>A difference and its limits have as many decimals as show two significant digits of the half-width.
 *   <li>None has more decimals than its metric allows.
 * </ul>
 */
public final class Figures {

    private static final int SPREAD_DIGITS = 2;
    private static final int POINT_DIGITS = 3;
    private static final int P_DIGITS = 2;
    private static final int SHARE_DIGITS = 2;
    private static final double LEAST_P = 0.001;

    private final Words words;
    private final Terms terms;

    public Figures(Words words) {
        this.words = words;
        this.terms = new Terms(words);
    }

    /** Digits with the sign of the language and a true minus. */
    public String number(double value, int decimals) {
        return Cell.Figure.digits(Rounding.halfUp(value, decimals), words.decimalSign());
    }

    public String range(Interval interval, int decimals) {
        return words.say("to", "low", number(interval.low(), decimals), "high", number(interval.high(), decimals));
    }

    /** With its unit behind a non-breaking space; a bare number stays bare. */
    public String withUnit(String number, Metric metric) {
        return metric.unit().spelling().isEmpty()
                ? number
                : number + "\u00a0" + metric.unit().spelling();
    }

    public Cell.Figure cell(double value, int decimals, String before, String after) {
        return new Cell.Figure(value, Rounding.halfUp(value, decimals), before, after, words.decimalSign(), "");
    }

    /** Decimals of a mean with this standard deviation. */
    public int ofSpread(Metric metric, double sd) {
        return capped(metric, Rounding.decimalsFor(sd, SPREAD_DIGITS));
    }

    /** Decimals of a difference with this interval. */
    public int ofDifference(Metric metric, Interval interval) {
        return capped(metric, Rounding.decimalsFor(interval.halfWidth(), SPREAD_DIGITS));
    }

    private static int capped(Metric metric, int decimals) {
        return metric.mostDecimals().isPresent()
                ? Math.min(decimals, metric.mostDecimals().getAsInt())
                : decimals;
    }

    /** Decimals of the number that stands for a comparand. */
    public int of(Comparand comparand, double value) {
        return comparand
                .origin()
                .fold(
                        published -> ofPublished(comparand, published, value),
                        local -> spread(comparand.summary())
                                .map(spread -> ofSpread(comparand.metric(), spread))
                                .orElseGet(() -> capped(comparand.metric(), significant(value, POINT_DIGITS))));
    }

    /** The spread whose digits a local number is printed to. */
    private static Optional<Double> spread(Summary summary) {
        return summary instanceof Summary.Sampled s
                ? Optional.of(s.moments().sd())
                : summary instanceof Summary.Estimated e
                        ? Optional.of(e.estimate().se())
                        : Optional.empty();
    }

    private int ofPublished(Comparand comparand, Origin.Published published, double value) {
        var reading = comparand.trail().stream()
                .filter(s -> s.kind() == Step.Kind.READ_FROM_FIGURE)
                .findFirst();
        if (reading.isPresent()) {
            // to the place of twice the reading uncertainty
            double u = Double.parseDouble(reading.get().facts().getOrDefault("uncertainty", "1"));
            return Rounding.decimalsFor(2 * u, 1);
        }
        var printed = figure(published.values().get(0));
        boolean scaled =
                comparand.trail().stream().anyMatch(s -> s.kind() == Step.Kind.UNIT || s.kind() == Step.Kind.VARIANT);
        return printed.map(p -> scaled ? converted(value, p) : p.number().decimals())
                .orElse(0);
    }

    private static int converted(double value, Printed printed) {
        int digits = printed.number().significantDigits();
        boolean gains = startsWithOne(Rounding.significant(value, digits))
                && !startsWithOne(printed.number().value());
        return significant(value, gains ? digits + 1 : digits);
    }

    private static boolean startsWithOne(BigDecimal number) {
        return number.unscaledValue().abs().toString().startsWith("1");
    }

    /** Decimals of a number that somebody set, as of a difference to be found: those it was set with, up to three digits. */
    public static int asSet(double value) {
        return Math.max(
                0,
                Rounding.significant(value, POINT_DIGITS).stripTrailingZeros().scale());
    }

    private static int significant(double value, int digits) {
        return Math.max(0, Rounding.significant(value, digits).scale());
    }

    /** The printed figure a value was recorded with, if it is one. */
    public static Optional<Printed> figure(ValueRecord value) {
        return value.value()
                .or(value::mean)
                .or(value::median)
                .or(value::atLeast)
                .or(value::atMost)
                .or(value::about)
                .map(f -> f.value())
                .or(() -> value.range().map(r -> r.value().low()));
    }

    /** Two significant digits, at most three decimals, and never less than "&lt;0.001". */
    public String p(double p) {
        return pCell(p).shown();
    }

    /** The same in a cell, which keeps the number as it was computed. */
    public Cell.Figure pCell(double p) {
        return p < LEAST_P
                ? new Cell.Figure(p, Rounding.halfUp(LEAST_P, 3), "<", "", words.decimalSign(), "")
                : cell(p, Math.min(3, Math.max(2, Rounding.decimalsFor(p, P_DIGITS))), "", "");
    }

    /** A share in per cent with two digits: whole from 10 on, one decimal or more below, and nothing but zero as zero. */
    public String percent(double share) {
        return number(100 * share, share == 0 ? 1 : Rounding.decimalsFor(100 * share, SHARE_DIGITS));
    }

    /** {@code +17.2 (12.8 to 21.6)}. */
    public String difference(Metric metric, Answer.Tested tested) {
        return difference(tested, ofDifference(metric, tested.interval()));
    }

    /** The same with the digits of another interval. */
    public String difference(Answer.Tested tested, int decimals) {
        return signed(tested.difference().value(), decimals) + " (" + range(tested.interval(), decimals) + ")";
    }

    /** With a sign, also where it is plus. */
    public String signed(double value, int decimals) {
        var text = number(value, decimals);
        return value > 0 && !text.startsWith("\u2212") ? "+" + text : text;
    }

    /** With the unit of differences behind a non-breaking space; a bare number stays bare. */
    public String withDifferenceUnit(String number, Metric metric) {
        var unit = terms.differenceUnit(metric);
        return unit.isEmpty() ? number : number + "\u00a0" + unit;
    }
}
