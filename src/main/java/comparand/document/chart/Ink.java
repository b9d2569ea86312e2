package comparand.document.chart;

/** A colour, by its place in the palette; each is legible on white, and dark enough to be told from paper in grey. */
public enum Ink {
    INK(0x1B1B2F),
    GREY(0x4A5568),
    TEAL(0x0B6E6E),
    PLUM(0x7A2E6B),
    OCHRE(0x9A5B00);

    private final int rgb;

    Ink(int rgb) {
        this.rgb = rgb;
    }

    /** As red, green and blue, eight bits each. */
    public int rgb() {
        return rgb;
    }
}
