package comparand.document.talk.layout;

/** A rectangle on a slide, in points. */
public record Box(double x, double y, double width, double height) {

    public double right() {
        return x + width;
    }

    public double bottom() {
        return y + height;
    }

    /** Smaller by so much on every side. */
    public Box inset(double by) {
        return new Box(x + by, y + by, width - 2 * by, height - 2 * by);
    }
}
