package comparand.write.figure;

import java.util.List;

/**
 * How a line is drawn; its ends are flat.
 *
 * @param rgb red, green and blue, eight bits each
 * @param width in points
 * @param dashes lengths in points, drawn and left out by turns; empty for a whole line
 */
public record Pen(int rgb, double width, List<Double> dashes) {

    public Pen {
        dashes = List.copyOf(dashes);
        if (!(width > 0)) {
            throw new IllegalArgumentException("a line has a width, got " + width);
        }
    }

    static Pen whole(int rgb, double width) {
        return new Pen(rgb, width, List.of());
    }
}
