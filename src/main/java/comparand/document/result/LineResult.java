package comparand.document.result;

import comparand.document.result.ComparandResult.RangeResult;
import java.util.List;

/** A straight line through one point per unit or case, with all that a figure of it takes. */
public record LineResult(
        @Says("What it runs along") String along,

        @Says("Unit of what it runs along, 1 for a pure number")
        String alongUnit,

        @Says("What it gives") String of,
        @Says("Unit of what it gives") String ofUnit,
        @Says("Number of points") int n,
        @Says("Where it meets zero of what it runs along") double intercept,

        @Says("What it gives more for one unit more of what it runs along")
        double slope,

        @Says("Standard error of the slope") double slopeSe,
        @Says("Standard deviation of the points about it") double residualSd,
        @Says("Share of the spread that it takes up") double rSquared,

        @Says("The range of the points; beyond it the line says nothing")
        RangeResult measured,

        @Says("The line and its 95 % interval at equal steps over that range")
        List<LinePointResult> points) {

    /** The line at one place. */
    public record LinePointResult(
            @Says("The place") double at,
            @Says("The line there") double mean,
            @Says("Lower 95 % limit of the line") double low,
            @Says("Upper 95 % limit of the line") double high) {}
}
