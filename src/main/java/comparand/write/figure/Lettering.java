package comparand.write.figure;

/**
 * One line of text.
 *
 * @param at where its base line begins, has its middle or ends, by its anchor
 * @param size of the face in points
 * @param strong whether it is set in the strong face
 * @param rgb red, green and blue, eight bits each
 */
public record Lettering(String text, Spot at, Anchor anchor, double size, boolean strong, int rgb) {

    /** Which part of the text stands at its place. */
    public enum Anchor {
        START,
        MIDDLE,
        END
    }

    /** Where its left end stands. */
    public double left(Measure measure) {
        double width = measure.width(text, size, strong);
        return switch (anchor) {
            case START -> at.x();
            case MIDDLE -> at.x() - width / 2;
            case END -> at.x() - width;
        };
    }
}
