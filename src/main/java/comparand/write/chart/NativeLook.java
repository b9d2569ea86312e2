package comparand.write.chart;

/**
 * How a native chart looks where it stands.
 *
 * @param face the type face that is asked for
 * @param size of all its text, in points
 * @param mark size of its marks, in points
 * @param line width of its lines, in points
 */
public record NativeLook(String face, double size, int mark, double line) {

    /** Office programs know marks of 2 to 72 points. */
    private static final int LEAST_MARK = 2;

    private static final int LARGEST_MARK = 72;

    public NativeLook {
        if (!(size >= 1) || mark < LEAST_MARK || mark > LARGEST_MARK || !(line > 0)) {
            throw new IllegalArgumentException("sizes of a chart are positive, marks 2 to 72 points");
        }
    }

    /** On a slide, legible from the last row. */
    public static NativeLook slide(String face) {
        return new NativeLook(face, 16, 10, 1.75);
    }

    /** On a sheet or a page. */
    public static NativeLook sheet(String face) {
        return new NativeLook(face, 9, 6, 1);
    }
}
