package comparand.normalise;

import comparand.diag.Located;
import comparand.metric.Metric;
import comparand.model.Step;
import comparand.model.library.AxisScale;
import comparand.model.library.FigureReadingRecord;
import comparand.model.library.SpreadKind;
import comparand.stat.AxisCalibration;
import comparand.unit.PrintedNumber;
import comparand.unit.Rounding;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The steps of a reading: how sure we are of the place of the mark, and, apart from it, the spread the source draws. The one is
 * ours, the other the sampling of the source.
 */
final class FigureSteps {

    private static final String LINEAR = "y = y₁ + (y₂ - y₁)(p - p₁)/(p₂ - p₁)";
    private static final String LOGARITHMIC = "y = y₁ (y₂/y₁)^((p - p₁)/(p₂ - p₁))";

    private FigureSteps() {}

    static List<Step> of(FigureReadingRecord record, SpreadKind kind, Metric metric) {
        var reading = record.reading(metric.unit());
        var steps = new ArrayList<>(List.of(Step.of(
                Step.Kind.READ_FROM_FIGURE,
                record.scale().value() == AxisScale.LOG10 ? LOGARITHMIC : LINEAR,
                "axis",
                ticks(record),
                "points",
                points(record),
                "value",
                String.valueOf(reading.value()),
                "uncertainty",
                String.valueOf(reading.uncertainty()),
                "placing",
                String.valueOf(reading.placing()),
                "centre",
                String.valueOf(reading.centre()),
                "repeats",
                String.valueOf(reading.repeats()),
                "readers",
                String.valueOf(reading.readers()))));
        record.axis().stream().skip(2).forEach(third -> {
            double at = third.at().value().toDouble();
            double is = third.is().value().in(metric.unit());
            var axis = record.calibration(metric.unit());
            steps.add(Step.of(
                    Step.Kind.AXIS_CHECKED,
                    "",
                    "axis",
                    tick(record, record.axis().indexOf(third)),
                    "off",
                    Rounding.significant(axis.offAt(at, is), 2).toPlainString(),
                    "unit",
                    metric.unit().spelling(),
                    "share",
                    Rounding.halfUp(100 * axis.residualOf(at, is), 1).toPlainString()));
        });
        record.bar(metric.unit()).ifPresent(bar -> steps.add(bar(record, bar, kind, metric)));
        return steps;
    }

    private static Step bar(FigureReadingRecord record, AxisCalibration.Bar bar, SpreadKind kind, Metric metric) {
        return Step.of(
                Step.Kind.ERROR_BAR,
                "w = (y_b - y_a)/2",
                "points",
                record.errorBar().stream().map(FigureSteps::text).collect(Collectors.joining(", ")),
                "from",
                KnownSpread.text(bar.low(), bar, metric) + " to " + KnownSpread.text(bar.high(), bar, metric),
                "value",
                String.valueOf(bar.halfLength()),
                "uncertainty",
                String.valueOf(bar.uncertainty()),
                "kind",
                kind.spelling());
    }

    private static String ticks(FigureReadingRecord record) {
        return tick(record, 0) + ", " + tick(record, 1);
    }

    private static String tick(FigureReadingRecord record, int i) {
        var tick = record.axis().get(i);
        return tick.is().value() + " at " + tick.at().value();
    }

    /** Each reader's places, with a semicolon between readers. */
    private static String points(FigureReadingRecord record) {
        var all = new ArrayList<String>();
        all.add(joined(record.points()));
        record.alsoRead().forEach(r -> all.add(joined(r.points())));
        return String.join("; ", all);
    }

    private static String joined(List<Located<PrintedNumber>> points) {
        return points.stream().map(FigureSteps::text).collect(Collectors.joining(", "));
    }

    private static String text(Located<PrintedNumber> point) {
        return point.value().text();
    }
}
