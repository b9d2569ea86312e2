package comparand.document.talk.layout;

/** Contrast of two colours, as the Web Content Accessibility Guidelines 2.1 define it. */
public final class Contrast {

    /** The least for text, by success criterion 1.4.3. */
    public static final double LEAST = 4.5;

    private Contrast() {}

    /** From 1 to 21. Colours as red, green and blue of eight bits each. */
    public static double ratio(int one, int other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16 & 0xFF) + 0.7152 * linear(rgb >> 8 & 0xFF) + 0.0722 * linear(rgb & 0xFF);
    }

    private static double linear(int eightBits) {
        double c = eightBits / 255.0;
        return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
