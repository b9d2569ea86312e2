package comparand.document.talk.layout;

/**
 * How wide text is, in a face of the widths of Helvetica and Arial: those of the Adobe Core 14 font metrics. Faces that are
 * installed on the machine are not asked, so that a talk breaks its lines alike everywhere.
 *
 * <p>Other faces are taken to be wider by a sixth, which most office faces do not reach.
 */
public final class TypeWidths {

    /** What programs differ by when they set the same face: hinting, kerning, the rounding of line ends. */
    private static final double SAFETY = 1.03;

    private static final double OTHER_FACE = 1.16;

    private static final int FIRST = 32;

    private static final int[] REGULAR = {
        278, 278, 355, 556, 556, 889, 667, 222, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556,
                556,
        556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556,
                833,
        722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 222, 556, 556, 500,
                556,
        556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500,
                334,
        260, 334, 584
    };

    private static final int[] STRONG = {
        278, 333, 474, 556, 556, 889, 722, 278, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556,
                556,
        556, 556, 556, 333, 333, 584, 584, 584, 611, 975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611,
                833,
        722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556, 278, 556, 611, 556,
                611,
        556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611, 611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500,
                389,
        280, 389, 584
    };

    /** Signs beyond ASCII that talks use, and a letter or sign of ASCII of at least their width. */
    private static final String BEYOND = "\u00a0\u202f\u2009±°µ–−·×≠≈≤≥’“”²³₂Δ→⁻¹⁰⁴⁵⁶⁷⁸⁹";

    private static final String AS_WIDE = "   +%n0+:+++++'\"\"(((M@(((((((((";

    private final double factor;

    public TypeWidths(String face) {
        boolean known = face.startsWith("Arial") || face.startsWith("Helvetica") || face.startsWith("Liberation Sans");
        this.factor = (known ? 1 : OTHER_FACE) * SAFETY;
    }

    /** Width of a text in one line, in points. */
    public double of(String text, double size, boolean strong) {
        return text.codePoints().map(c -> width(c, strong)).sum() * factor * size / 1000;
    }

    /** Width of a letter in thousandths of its size, without any factor. */
    static int width(int letter, boolean strong) {
        int known = BEYOND.indexOf(letter);
        int place = (known >= 0 ? AS_WIDE.charAt(known) : letter) - FIRST;
        var widths = strong ? STRONG : REGULAR;
        // letters with accents are as wide as wide small letters, or as wide capitals
        return place >= 0 && place < widths.length
                ? widths[place]
                : Character.isLowerCase(letter) ? 611 : Character.isUpperCase(letter) ? 778 : 1000;
    }
}
