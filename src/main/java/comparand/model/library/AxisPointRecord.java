package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.Printed;
import comparand.unit.PrintedNumber;

/** A tick of a figure's axis: its place in picture points and the value printed at it. */
public record AxisPointRecord(
        @Meaning("Position along the axis, in picture points")
        Located<PrintedNumber> at,

        @Meaning("The value printed at that tick") Located<Printed> is) {}
