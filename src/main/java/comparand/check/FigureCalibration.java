package comparand.check;

import comparand.metric.Metric;
import comparand.model.Library.PublishedValue;
import comparand.model.library.AxisPointRecord;
import comparand.model.library.AxisScale;
import comparand.model.library.FigureReadingRecord;
import comparand.unit.Rounding;
import java.util.stream.Stream;

/**
 * What it checks: a reading from a figure that lies outside its ticks, whose third tick is off the line, whose axis
 * cannot be, or whose mark has no size.
 *
 * <p>Why it matters: the reading error is larger than it looks.
 *
 * <p>What to write instead: two ticks near the ends of the axis, and a third between them.
 */
final class FigureCalibration implements Rule {

    @Override
    public String code() {
        return "figure-calibration";
    }

    private static final double LARGEST_RESIDUAL = 0.01;
    private static final double FURTHEST_OUTSIDE = 0.25;

    @Override
    public void check(Context library, Findings findings) {
        library.eachValue((value, metric) -> value.value().readFromFigure().ifPresent(reading -> {
            if (isMeasured(reading, metric)) {
                axis(reading, metric, findings);
            }
            uncertainty(reading, findings);
            mark(reading, findings);
            if (canBeRead(reading, metric)) {
                readings(value, reading, findings);
                thirdTick(value, reading, metric, findings);
            }
        }));
    }

    /** Whether an axis can be calibrated in the unit of the metric. */
    static boolean canBeRead(FigureReadingRecord reading, Metric metric) {
        return isMeasured(reading, metric) && ticksDiffer(reading, metric) && hasLogarithms(reading, metric);
    }

    /** Ticks without a fitting unit are found by the rules on units. */
    private static boolean isMeasured(FigureReadingRecord reading, Metric metric) {
        return reading.axis().stream()
                .allMatch(tick -> UnitFit.of(tick.is().value().unit(), metric.unit()) == UnitFit.FITS);
    }

    private static boolean ticksDiffer(FigureReadingRecord reading, Metric metric) {
        var first = reading.axis().get(0);
        var second = reading.axis().get(1);
        return first.at().value().toDouble() != second.at().value().toDouble()
                && is(first, metric) != is(second, metric);
    }

    private static boolean hasLogarithms(FigureReadingRecord reading, Metric metric) {
        return reading.scale().value() != AxisScale.LOG10
                || reading.axis().stream().allMatch(tick -> is(tick, metric) > 0);
    }

    private static void axis(FigureReadingRecord reading, Metric metric, Findings findings) {
        if (!ticksDiffer(reading, metric)) {
            findings.stop(
                    reading.axis().get(1).at().span(),
                    "the two ticks of this axis do not differ",
                    "no axis can be calibrated by them",
                    "pick two ticks with different places and values");
        } else if (!hasLogarithms(reading, metric)) {
            findings.stop(
                    reading.scale().span(),
                    "a logarithmic axis has positive values only",
                    "the logarithm of one of its ticks does not exist",
                    "write `scale: linear`, or pick other ticks");
        }
    }

    private static void uncertainty(FigureReadingRecord reading, Findings findings) {
        if (reading.pointUncertainty().value().toDouble() < 0) {
            findings.stop(
                    reading.pointUncertainty().span(),
                    "the uncertainty of a reading is not negative, got `%s`"
                            .formatted(reading.pointUncertainty().value()),
                    "the error of the reading is carried into every interval",
                    "write how far a reading may be off, in picture points");
        }
    }

    private static void mark(FigureReadingRecord reading, Findings findings) {
        reading.markSize()
                .filter(s -> s.value().value().signum() <= 0)
                .ifPresent(s -> findings.stop(
                        s.span(),
                        "a mark has a size, got `%s`".formatted(s.value()),
                        "half of it is added to the error of a reading whose centre is uncertain",
                        "write its size along the axis, in picture points"));
        reading.centreUncertain()
                .filter(c -> c.value().isYes() && reading.markSize().isEmpty())
                .ifPresent(c -> findings.stop(
                        c.span(),
                        "the centre of the mark is uncertain, and its size is not given",
                        "half of its size is added to the error of the reading",
                        "add `mark-size:` in picture points"));
    }

    private static void readings(PublishedValue value, FigureReadingRecord reading, Findings findings) {
        double p1 = reading.axis().get(0).at().value().toDouble();
        double p2 = reading.axis().get(1).at().value().toDouble();
        var all =
                Stream.concat(reading.allPoints(), reading.errorBar().stream()).toList();
        for (var point : all) {
            double t = (point.value().toDouble() - p1) / (p2 - p1);
            if (t < -FURTHEST_OUTSIDE || t > 1 + FURTHEST_OUTSIDE) {
                findings.hold(
                        value,
                        point.span(),
                        "the reading at %s lies far outside the two ticks".formatted(point.value()),
                        "the error of a reading grows with its distance from the ticks",
                        "calibrate the axis by ticks on both sides of the reading");
            }
        }
    }

    private static void thirdTick(PublishedValue value, FigureReadingRecord reading, Metric metric, Findings findings) {
        reading.axis().stream().skip(2).forEach(third -> {
            var axis = reading.calibration(metric.unit());
            double at = third.at().value().toDouble();
            double off = axis.residualOf(at, is(third, metric));
            if (off > LARGEST_RESIDUAL) {
                findings.hold(
                        value,
                        third.at().span(),
                        "a further tick lies off the line by %s %% of the axis, %s"
                                .formatted(
                                        Rounding.halfUp(100 * off, 1).toPlainString(),
                                        amount(Math.abs(axis.offAt(at, is(third, metric))), metric)),
                        "the axis is bent, skewed, or a tick was misplaced",
                        "place the ticks again");
            }
        });
    }

    private static String amount(double off, Metric metric) {
        return (Rounding.significant(off, 2).toPlainString() + " " + metric.unit()).strip();
    }

    private static double is(AxisPointRecord tick, Metric metric) {
        return tick.is().value().in(metric.unit());
    }
}
