package comparand.normalise;

import static java.util.Objects.requireNonNull;

import comparand.metric.Metric;
import comparand.model.library.SpreadKind;
import comparand.model.library.SpreadRecord;
import comparand.model.library.ValueRecord;
import comparand.stat.AxisCalibration;
import comparand.unit.Rounding;
import java.util.List;
import java.util.Optional;

/**
 * The spread a source gives, in the metric's unit and on the footing: in figures, or as an error bar that was read.
 *
 * @param figures one width, or two ends with the lower one first
 * @param halfWidth within how much an end is known: half a unit of its last digit, or as far as it was read
 * @param text the figures as written, or as read
 */
record KnownSpread(SpreadKind kind, List<Double> figures, double halfWidth, String text) {

    KnownSpread {
        requireNonNull(kind, "kind");
        requireNonNull(text, "text");
        figures = List.copyOf(figures);
        if (figures.isEmpty() || figures.size() != kind.figures()) {
            throw new IllegalArgumentException("a spread of kind %s has %d figures, got %d"
                    .formatted(kind.spelling(), kind.figures(), figures.size()));
        }
    }

    static Optional<KnownSpread> of(ValueRecord value, Metric metric, Footing footing) {
        var bar = value.readFromFigure().flatMap(r -> r.bar(metric.unit()));
        return bar.isPresent()
                ? bar.filter(b -> value.spreadKind() != SpreadKind.NOT_REPORTED)
                        .map(b -> read(value.spreadKind(), b, metric, footing))
                : value.spread().filter(s -> !s.figures().isEmpty()).map(s -> printed(s, metric, footing));
    }

    private static KnownSpread printed(SpreadRecord spread, Metric metric, Footing footing) {
        boolean ends = spread.figures().size() == 2;
        return new KnownSpread(
                spread.kind().value(),
                spread.figures().stream()
                        // an end takes part in factors and shifts, a width in factors only
                        .map(f -> ends
                                ? footing.value(f.value().in(metric.unit()))
                                : footing.spread(f.value().asDifferenceIn(metric.unit())))
                        .toList(),
                footing.spread(spread.figures().get(0).value().halfUnitIn(metric.unit())),
                spread.text());
    }

    private static KnownSpread read(SpreadKind kind, AxisCalibration.Bar bar, Metric metric, Footing footing) {
        boolean ends = kind.figures() == 2;
        return new KnownSpread(
                kind,
                ends
                        ? List.of(footing.value(bar.low()), footing.value(bar.high()))
                        : List.of(footing.spread(bar.halfLength())),
                // of one end: the half-length of two has 1/√2 of its uncertainty, and a rectangle is √3 times as wide
                footing.spread(Math.sqrt(6) * bar.uncertainty()),
                ends
                        ? text(bar.low(), bar, metric) + " to " + text(bar.high(), bar, metric)
                        : text(bar.halfLength(), bar, metric));
    }

    /** To the place of twice the uncertainty of the reading. */
    static String text(double read, AxisCalibration.Bar bar, Metric metric) {
        var digits = bar.uncertainty() > 0
                ? Rounding.halfUp(read, Rounding.decimalsFor(2 * bar.uncertainty(), 1))
                : Rounding.significant(read, 3);
        return (digits.toPlainString() + " " + metric.unit()).strip();
    }

    double width() {
        return figures.get(0);
    }

    double low() {
        return figures.get(0);
    }

    double high() {
        return figures.get(1);
    }
}
