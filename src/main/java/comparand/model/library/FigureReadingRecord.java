package comparand.model.library;

import comparand.diag.Located;
import comparand.stat.AxisCalibration;
import comparand.stat.Placings;
import comparand.unit.Printed;
import comparand.unit.PrintedNumber;
import comparand.unit.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A value read from a figure: the picture, the calibration of the axis and the readings, so that anybody can repeat it. All
 * places are counted along the axis, in points of the picture as it is stored, whatever it was enlarged to.
 */
public record FigureReadingRecord(
        @Meaning("The picture it was read from") Optional<PictureRecord> picture,
        @Meaning("linear or log10") Located<AxisScale> scale,

        @Meaning("Two ticks, or three for a check of straightness") @AtLeast(2)
        List<AxisPointRecord> axis,

        @Meaning(
                "Both ends of the axis as it is drawn, in picture points: the ticks should span a quarter of it or more")
        List<Located<PrintedNumber>> ends,

        @Meaning("Angle between the axis and the edge of the picture, in degrees; 0 is straight")
        Optional<Located<PrintedNumber>> angle,

        @Meaning("Where the axis is broken, in picture points; left out where it is not") @Key("broken-at")
        List<Located<PrintedNumber>> brokenAt,

        @Meaning("For a bar chart: the value of the axis from which the bars rise") @Key("bars-from")
        Optional<Located<Printed>> barsFrom,

        @Meaning("Positions read for the value, one per reading, in picture points") @AtLeast(1)
        List<Located<PrintedNumber>> points,

        @Meaning("What further people read, independently") @Key("also-read")
        List<FurtherPointsRecord> alsoRead,

        @Meaning("How far a reading may be off, in picture points") @Key("point-uncertainty")
        Located<PrintedNumber> pointUncertainty,

        @Meaning("Size of the mark along the axis, in picture points") @Key("mark-size")
        Optional<Located<PrintedNumber>> markSize,

        @Meaning("Whether the centre of the mark is uncertain; then half its size is added in quadrature")
        @Key("centre-uncertain")
        Optional<Located<YesNo>> centreUncertain,

        @Meaning("Both ends of the error bar, in picture points; what it stands for is `spread: kind`, or not stated")
        @Key("error-bar")
        List<Located<PrintedNumber>> errorBar,

        @Meaning("What the mark stands for: mean, median or value")
        Optional<Located<FigureMark>> shows) {

    /** The axis as its first two ticks calibrate it, in a unit. */
    public AxisCalibration calibration(Unit unit) {
        var first = axis.get(0);
        var second = axis.get(1);
        return new AxisCalibration(
                first.at().value().toDouble(),
                first.is().value().in(unit),
                second.at().value().toDouble(),
                second.is().value().in(unit),
                scale.value() == AxisScale.LOG10);
    }

    /** The value and its standard uncertainty, in a unit. */
    public AxisCalibration.Reading reading(Unit unit) {
        return calibration(unit).read(placings());
    }

    /** The error bar, if its two ends were read, in a unit. */
    public Optional<AxisCalibration.Bar> bar(Unit unit) {
        return hasErrorBar()
                ? Optional.of(calibration(unit)
                        .bar(
                                pointUncertainty.value().toDouble(),
                                errorBar.get(0).value().toDouble(),
                                errorBar.get(1).value().toDouble()))
                : Optional.empty();
    }

    public boolean hasErrorBar() {
        return errorBar.size() == 2;
    }

    /** Every place where the mark itself was read, by whomever. */
    public Stream<Located<PrintedNumber>> allPoints() {
        return Stream.concat(points.stream(), alsoRead.stream().flatMap(a -> a.points().stream()));
    }

    /** Half the size of a mark whose centre is uncertain, in picture points; otherwise 0. */
    private double centre() {
        return centreUncertain.filter(c -> c.value().isYes()).isPresent()
                ? markSize.map(s -> s.value().toDouble() / 2).orElse(0.0)
                : 0;
    }

    private Placings placings() {
        return new Placings(
                pointUncertainty.value().toDouble(),
                centre(),
                Stream.concat(Stream.of(points), alsoRead.stream().map(FurtherPointsRecord::points))
                        .map(read ->
                                read.stream().map(p -> p.value().toDouble()).toList())
                        .toList());
    }
}
