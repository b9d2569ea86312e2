package comparand.check;

import comparand.model.library.AxisScale;

/**
 * What it checks: a reading from a figure whose ticks lie close together, whose reading lies outside of them,
 * whose third tick is off, or whose axis cannot be.
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
            var first = reading.axis().get(0);
            var second = reading.axis().get(1);
            double p1 = first.at().value().toDouble();
            double p2 = second.at().value().toDouble();
            if (p1 == p2
                    || !first.is().value().unit().convertsTo(metric.unit())
                    || !second.is().value().unit().convertsTo(metric.unit())
                    || first.is().value().in(metric.unit())
                            == second.is().value().in(metric.unit())) {
                findings.stop(
                        second.at().span(),
                        "the two ticks of this axis do not differ",
                        "no axis can be calibrated by them",
                        "pick two ticks with different places and values");
                return;
            }
            if (reading.scale().value() == AxisScale.LOG10
                    && !(first.is().value().in(metric.unit()) > 0
                            && second.is().value().in(metric.unit()) > 0)) {
                findings.stop(
                        reading.scale().span(),
                        "a logarithmic axis has positive values only",
                        "the logarithm of this tick does not exist",
                        "write `scale: linear`, or pick other ticks");
                return;
            }
            for (var point : reading.points()) {
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
            if (reading.axis().size() > 2) {
                var third = reading.axis().get(2);
                double off = reading.calibration(metric.unit())
                        .residualOf(
                                third.at().value().toDouble(),
                                third.is().value().in(metric.unit()));
                if (off > LARGEST_RESIDUAL) {
                    findings.hold(
                            value,
                            third.at().span(),
                            "the third tick lies off the line by %.1f %% of the axis".formatted(100 * off),
                            "the axis is bent, skewed, or a tick was misplaced",
                            "place the ticks again");
                }
            }
        }));
    }
}
