package comparand.normalise;

import comparand.diag.Located;
import comparand.metric.Metric;
import comparand.metric.Nature;
import comparand.model.Label;
import comparand.model.Step;
import comparand.model.Summary;
import comparand.model.Summary.PointKind;
import comparand.model.library.FigureMark;
import comparand.model.library.SampleSize;
import comparand.model.library.SampleUnit;
import comparand.model.library.SpreadKind;
import comparand.model.library.SpreadReading;
import comparand.model.library.ValueRecord;
import comparand.stat.Interval;
import comparand.stat.IntervalConversion;
import comparand.stat.Lognormal;
import comparand.stat.MedianAndQuartiles;
import comparand.stat.MedianAndRange;
import comparand.stat.MedianConversion;
import comparand.stat.MedianSummary;
import comparand.stat.Moments;
import comparand.stat.SpreadConversion;
import comparand.unit.Printed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The form in which a source summarises its results, brought to mean, SD and number where that is honest; otherwise the
 * value stays the point, limit, range or count it is.
 */
final class SummaryForm {

    /** Of the intervals that sources print. */
    private static final double LEVEL = 0.95;

    private final Metric metric;
    private final ValueRecord value;
    private final Footing footing;
    private final Optional<SpreadReading> reading;
    private final List<Step> steps = new ArrayList<>();

    private SummaryForm(Metric metric, ValueRecord value, Footing footing, Optional<SpreadReading> reading) {
        this.reading = reading;
        this.metric = metric;
        this.value = value;
        this.footing = footing;
    }

    /** A summary in the metric's unit and on the footing, with the steps the form itself needed. */
    record Formed(Summary summary, List<Step> steps) {}

    /**
     * What is printed, as it can be compared.
     *
     * @param reading of a spread that is not explained; both ways if empty
     */
    static Formed of(Metric metric, ValueRecord value, Footing footing, Optional<SpreadReading> reading) {
        var form = new SummaryForm(metric, value, footing, reading);
        return new Formed(form.summary(), List.copyOf(form.steps));
    }

    private Summary summary() {
        if (value.claim().isPresent()) {
            return new Summary.Words(value.claim().get().value());
        }
        if (value.count().isPresent()) {
            var count = value.count().get().value();
            return new Summary.Events(count.events(), count.of());
        }
        if (value.range().isPresent()) {
            var range = value.range().get().value();
            return new Summary.Extent(onFooting(range.low()), onFooting(range.high()));
        }
        if (value.atLeast().isPresent()) {
            return new Summary.Limit(true, onFooting(value.atLeast().get().value()));
        }
        if (value.atMost().isPresent()) {
            return new Summary.Limit(false, onFooting(value.atMost().get().value()));
        }
        if (value.about().isPresent()) {
            var about = value.about().get().value();
            return new Summary.Point(
                    onFooting(about), footing.spread(about.roughHalfUnitIn(metric.unit())), PointKind.ABOUT);
        }
        if (value.readFromFigure().isPresent()) {
            return fromFigure();
        }
        if (value.median().isPresent()) {
            var printed = value.median().get().value();
            return median(
                    onFooting(printed),
                    footing.spread(printed.halfUnitIn(metric.unit())),
                    Label.REPORTED,
                    PointKind.MEDIAN);
        }
        var printed = value.mean().or(value::value).map(Located::value).orElseThrow();
        return mean(
                onFooting(printed),
                footing.spread(printed.halfUnitIn(metric.unit())),
                Label.REPORTED,
                PointKind.FIGURE);
    }

    private Summary fromFigure() {
        var record = value.readFromFigure().orElseThrow();
        var reading = record.reading(metric.unit());
        // the rectangle whose standard deviation is the reading's standard uncertainty
        double halfWidth = footing.spread(reading.uncertainty() * Math.sqrt(3));
        steps.addAll(FigureSteps.of(record, value.spreadKind(), metric));
        double read = footing.value(reading.value());
        return record.shows().filter(s -> s.value() == FigureMark.MEDIAN).isPresent()
                ? median(read, halfWidth, Label.DIGITISED, PointKind.READ_FROM_FIGURE)
                : mean(read, halfWidth, Label.DIGITISED, PointKind.READ_FROM_FIGURE);
    }

    /** A mean with whatever spread is printed beside it. */
    private Summary mean(double mean, double halfWidth, Label label, PointKind otherwise) {
        if (metric.nature() == Nature.STATED) {
            return new Summary.Point(mean, halfWidth, PointKind.NOMINAL);
        }
        var spread = KnownSpread.of(value, metric, footing);
        if (spread.isEmpty()) {
            return new Summary.Point(mean, halfWidth, otherwise);
        }
        var n = independent();
        if (n.isEmpty()) {
            return new Summary.Point(mean, halfWidth, otherwise == PointKind.FIGURE ? PointKind.INCOMPLETE : otherwise);
        }
        if (spread.get().kind() == SpreadKind.NOT_STATED) {
            double figure = spread.get().width();
            var asSd = new Moments(mean, figure, n.get());
            var asSe = new Moments(mean, SpreadConversion.sdFromSe(figure, n.get()), n.get());
            return reading.<Summary>map(
                            r -> Summary.Sampled.published(r == SpreadReading.SD ? asSd : asSe, label, halfWidth))
                    .orElseGet(() -> new Summary.EitherSpread(asSd, asSe, halfWidth));
        }
        return sd(spread.get(), mean, n.get())
                .<Summary>map(s ->
                        Summary.Sampled.published(new Moments(mean, s.sd, n.get()), label.weakerOf(s.label), halfWidth))
                .orElseGet(() -> new Summary.Point(
                        mean, halfWidth, otherwise == PointKind.FIGURE ? PointKind.INCOMPLETE : otherwise));
    }

    private record Sd(double sd, Label label) {}

    private Optional<Sd> sd(KnownSpread spread, double mean, int n) {
        return switch (spread.kind()) {
            case SD -> Optional.of(new Sd(spread.width(), Label.REPORTED));
            case SE -> {
                double sd = SpreadConversion.sdFromSe(spread.width(), n);
                step(Step.Kind.SPREAD, "SD = SE · √n", n, sd, spread);
                yield Optional.of(new Sd(sd, Label.EXACT));
            }
            case CI95 -> fromInterval(spread, mean, n);
            case IQR ->
                n < MedianAndQuartiles.FEWEST
                        ? Optional.empty()
                        : Optional.of(estimated(
                                SpreadConversion.sdFromQuartiles(spread.low(), spread.high(), n),
                                "SD = (q₃ - q₁) / (2 z)",
                                n,
                                spread));
            case RANGE ->
                n < MedianAndRange.FEWEST
                        ? Optional.empty()
                        : Optional.of(estimated(
                                SpreadConversion.sdFromRange(spread.low(), spread.high(), n),
                                "SD = (b - a) / ξ(n)",
                                n,
                                spread));
            case NOT_STATED, NOT_REPORTED -> Optional.empty();
        };
    }

    /** Refused where the interval is not centred on the mean, or its limits are rounded too coarsely to tell its width. */
    private Optional<Sd> fromInterval(KnownSpread spread, double mean, int n) {
        var ci = new Interval(spread.low(), spread.high());
        double rounding = spread.halfWidth();
        boolean centred =
                Math.abs(mean - (ci.low() + ci.high()) / 2) <= Math.max(2 * rounding, 0.02 * (ci.high() - ci.low()));
        double sd = SpreadConversion.sdFromInterval(ci, n, LEVEL);
        double relative = SpreadConversion.uncertaintyOfSeFromRoundedLimits(rounding, n, LEVEL) / (sd / Math.sqrt(n));
        if (!centred || !(sd > 0) || relative > 0.3) {
            return Optional.empty();
        }
        step(Step.Kind.SPREAD, "SD = √n · (upper - lower) / (2 t)", n, sd, spread);
        return Optional.of(new Sd(sd, Label.EXACT));
    }

    private Sd estimated(double sd, String formula, int n, KnownSpread spread) {
        step(Step.Kind.SPREAD, formula, n, sd, spread);
        return new Sd(sd, Label.ESTIMATED);
    }

    private Summary median(double m, double halfWidth, Label label, PointKind otherwise) {
        return KnownSpread.of(value, metric, footing)
                .filter(s -> s.figures().size() == 2)
                .flatMap(spread -> independent()
                        .flatMap(n -> described(spread, m, n))
                        .flatMap(d -> MedianConversion.of(d).value())
                        .map(converted -> estimated(spread, m, halfWidth, label, converted)))
                .orElseGet(() -> new Summary.Point(m, halfWidth, otherwise));
    }

    /** The median with what is printed of the values around it, if that is in order. */
    private Optional<MedianSummary> described(KnownSpread spread, double median, int n) {
        double low = spread.low();
        double high = spread.high();
        if (!(low <= median && median <= high)) {
            return Optional.empty();
        }
        return switch (spread.kind()) {
            case IQR -> Optional.of(new MedianAndQuartiles(low, median, high, n));
            case RANGE -> Optional.of(new MedianAndRange(low, median, high, n));
            case SD, SE, CI95, NOT_STATED, NOT_REPORTED -> Optional.empty();
        };
    }

    /** Values that are skewed, and whose logarithms are not, are taken as lognormal. */
    private Summary estimated(
            KnownSpread spread, double median, double halfWidth, Label label, MedianConversion.Converted converted) {
        boolean plain = converted.scale() == IntervalConversion.Scale.PLAIN;
        var moments = plain ? converted.moments() : Lognormal.plain(converted.moments());
        var formula = spread.kind() == SpreadKind.IQR
                ? "mean = w(q₁ + q₃)/2 + (1 - w)m, SD = (q₃ - q₁)/(2 z)"
                : "mean = w(a + b)/2 + (1 - w)m, SD = (b - a)/ξ(n)";
        steps.add(Step.of(
                Step.Kind.QUARTILES,
                plain ? formula : formula + " of logarithms; mean = exp(m_L + s_L²/2), SD = mean √(exp(s_L²) - 1)",
                "median",
                String.valueOf(median),
                "from",
                spread.text(),
                "kind",
                spread.kind().spelling(),
                "n",
                String.valueOf(moments.n()),
                "mean",
                String.valueOf(moments.mean()),
                "sd",
                String.valueOf(moments.sd())));
        return Summary.Sampled.published(moments, label.weakerOf(Label.ESTIMATED), halfWidth);
    }

    private void step(Step.Kind kind, String formula, int n, double sd, KnownSpread spread) {
        steps.add(Step.of(
                kind,
                formula,
                "kind",
                spread.kind().spelling(),
                "from",
                spread.text(),
                "n",
                String.valueOf(n),
                "sd",
                String.valueOf(sd)));
    }

    /** The number of independent results; samples of the same case are none, and one result has no spread. */
    private Optional<Integer> independent() {
        return value.n()
                .flatMap(n -> n.value().size())
                .filter(s -> s.of() != SampleUnit.SAMPLES)
                .map(SampleSize::count)
                .filter(n -> n >= 2);
    }

    private double onFooting(Printed printed) {
        return footing.value(printed.in(metric.unit()));
    }
}
