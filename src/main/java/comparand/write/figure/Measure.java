package comparand.write.figure;

/** How wide text is. */
public interface Measure {

    /** In points, at a size in points, in the regular or the strong face. */
    double width(String text, double size, boolean strong);
}
