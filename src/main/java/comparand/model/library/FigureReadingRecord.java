package comparand.model.library;

import comparand.diag.Located;
import comparand.stat.AxisCalibration;
import comparand.unit.PrintedNumber;
import comparand.unit.Unit;
import java.util.List;
import java.util.Optional;

/** A value read from a figure: the calibration of the axis and the readings, so that anybody can repeat it. */
public record FigureReadingRecord(
        @Meaning("linear or log10") Located<AxisScale> scale,

        @Meaning("Two ticks, or three for a check of straightness") @AtLeast(2)
        List<AxisPointRecord> axis,

        @Meaning("Positions read for the value, one per reading, in picture points") @AtLeast(1)
        List<Located<PrintedNumber>> points,

        @Meaning("How far a reading may be off, in picture points") @Key("point-uncertainty")
        Located<PrintedNumber> pointUncertainty,

        @Meaning("What the mark stands for: mean, median or value")
        Optional<Located<String>> shows) {

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
        return calibration(unit)
                .read(
                        pointUncertainty.value().toDouble(),
                        points.stream().mapToDouble(p -> p.value().toDouble()).toArray());
    }
}
