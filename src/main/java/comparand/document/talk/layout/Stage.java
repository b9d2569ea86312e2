package comparand.document.talk.layout;

/**
 * What the masters of a presentation leave for a slide.
 *
 * @param title where the title stands
 * @param titleSize size of its text
 * @param body between title and foot
 * @param foot where strip, marks and imprint stand
 * @param face of the text
 * @param paper colour of the background, as red, green and blue of eight bits each
 * @param ink colour of text
 * @param titleInk colour of titles
 * @param own whether the masters are the tool's own
 */
public record Stage(
        Box title, double titleSize, Box body, Box foot, String face, int paper, int ink, int titleInk, boolean own) {

    /** Width and height of a slide: 13.33 by 7.5 inches. */
    public static final double WIDTH = 960;

    public static final double HEIGHT = 540;

    private static final double SIDE = 48;

    /** The tool's own: white, dark text, nothing that takes room. */
    public static Stage plain(String face) {
        return new Stage(
                new Box(SIDE, 24, WIDTH - 2 * SIDE, 80),
                30,
                new Box(SIDE, 118, WIDTH - 2 * SIDE, 348),
                new Box(SIDE, 474, WIDTH - 2 * SIDE, 54),
                face,
                0xFFFFFF,
                0x1B1B2F,
                0x1B1B2F,
                true);
    }

    public Lines lines() {
        return new Lines(new TypeWidths(face));
    }
}
