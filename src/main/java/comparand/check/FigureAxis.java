package comparand.check;

import comparand.diag.Located;
import comparand.metric.Metric;
import comparand.model.Library.PublishedValue;
import comparand.model.library.AxisScale;
import comparand.model.library.FigureReadingRecord;
import comparand.unit.PrintedNumber;
import comparand.unit.Rounding;
import java.util.stream.DoubleStream;

/**
 * What it checks: an axis whose ticks span less than a quarter of it, that stands askew by more than half a degree, or that is
 * broken between what was read of it; and bars that do not rise from zero.
 *
 * <p>Why it matters: each of them moves a reading by more than its uncertainty says.
 *
 * <p>What to write instead: ticks at both ends of the axis, on the same side of a break as the reading, of a picture that was
 * turned upright.
 */
final class FigureAxis implements Rule {

    @Override
    public String code() {
        return "figure-axis";
    }

    private static final double SMALLEST_SPAN = 0.25;
    private static final double LARGEST_ANGLE = 0.5;

    @Override
    public void check(Context library, Findings findings) {
        library.eachValue((value, metric) -> value.value().readFromFigure().ifPresent(reading -> {
            ends(value, reading, findings);
            angle(value, reading, findings);
            reading.brokenAt().forEach(at -> broken(value, reading, at, findings));
            bars(reading, metric, findings);
        }));
    }

    private static void ends(PublishedValue value, FigureReadingRecord reading, Findings findings) {
        var ends = reading.ends();
        if (ends.isEmpty()) {
            return;
        }
        double length = ends.size() == 2 ? Math.abs(number(ends.get(0)) - number(ends.get(1))) : 0;
        if (length == 0) {
            findings.stop(
                    ends.get(0).span(),
                    "an axis has two ends at different places",
                    "by its ends the ticks are held against the length of the axis",
                    "write both ends as `ends: [640, 120]`, or leave the key out");
            return;
        }
        double span = Math.abs(place(reading, 0) - place(reading, 1)) / length;
        if (span > 0 && span < SMALLEST_SPAN) {
            findings.hold(
                    value,
                    reading.axis().get(1).at().span(),
                    "the two ticks span %s %% of the axis"
                            .formatted(Rounding.halfUp(100 * span, 0).toPlainString()),
                    "the error of a tick grows with the distance it is carried over",
                    "pick ticks near both ends of the axis");
        }
    }

    private static void angle(PublishedValue value, FigureReadingRecord reading, Findings findings) {
        reading.angle()
                .filter(a -> Math.abs(number(a)) > LARGEST_ANGLE)
                .ifPresent(a -> findings.hold(
                        value,
                        a.span(),
                        "the axis stands askew by %s degrees, more than %s".formatted(a.value(), LARGEST_ANGLE),
                        "a mark far from a skewed axis is read at the wrong height",
                        "turn the picture until the axis is straight, and read it again"));
    }

    private static void broken(
            PublishedValue value, FigureReadingRecord reading, Located<PrintedNumber> at, Findings findings) {
        var places = DoubleStream.concat(
                        reading.axis().stream().mapToDouble(t -> number(t.at())),
                        DoubleStream.concat(
                                reading.allPoints().mapToDouble(FigureAxis::number),
                                reading.errorBar().stream().mapToDouble(FigureAxis::number)))
                .summaryStatistics();
        double here = number(at);
        if (places.getMin() <= here && here <= places.getMax()) {
            findings.hold(
                    value,
                    at.span(),
                    "the axis is broken at %s, between the places that were read of it".formatted(at.value()),
                    "on the two sides of a break the same distance is not the same amount",
                    "calibrate the axis by ticks on the side of the reading");
        }
    }

    /** On a logarithmic axis bars have no zero to rise from. */
    private static void bars(FigureReadingRecord reading, Metric metric, Findings findings) {
        reading.barsFrom()
                .filter(from -> reading.scale().value() == AxisScale.LINEAR
                        && UnitFit.of(from.value().unit(), metric.unit()) == UnitFit.FITS
                        && from.value().number().value().signum() != 0)
                .ifPresent(from -> findings.note(
                        from.span(),
                        "the bars of this figure rise from %s and not from zero".formatted(from.value()),
                        "their lengths are not in the ratio of the values",
                        "see that the ticks, and not the lengths of bars, were read; then nothing is to be done"));
    }

    private static double place(FigureReadingRecord reading, int tick) {
        return number(reading.axis().get(tick).at());
    }

    private static double number(Located<PrintedNumber> at) {
        return at.value().toDouble();
    }
}
