package comparand.document.chart;

import java.util.List;

/** A band that follows a curve, such as the interval about a line; tinted. */
public record Ribbon(String name, Ink ink, List<Slice> slices) {

    public Ribbon {
        slices = List.copyOf(slices);
    }

    /** Its two edges at one place of the axis across. */
    public record Slice(double across, double low, double high) {}
}
