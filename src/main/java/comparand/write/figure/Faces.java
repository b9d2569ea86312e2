package comparand.write.figure;

import comparand.document.Look;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.Optional;

/** The two type faces figures are drawn in: those of a house, or else Source Sans 3. */
public final class Faces implements Measure {

    private static final String FOLDER = "/comparand/write/fonts/";
    /** Widths are measured large, without fitting to pixels, so that they scale. */
    private static final float LARGE = 1000;

    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

    private final Font regular;
    private final Font strong;

    private Faces(Font regular, Font strong) {
        this.regular = regular;
        this.strong = strong;
    }

    public static Faces of(Optional<Look.Fonts> fonts) throws IOException {
        return fonts.isPresent()
                ? new Faces(
                        font(fonts.get().regular().name(), fonts.get().regular().bytes()),
                        font(fonts.get().strong().name(), fonts.get().strong().bytes()))
                : new Faces(own("SourceSans3-Regular.ttf"), own("SourceSans3-Semibold.ttf"));
    }

    private static Font own(String name) throws IOException {
        try (InputStream in = Faces.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IOException("the font " + name + " is missing from the program");
            }
            return font(name, in.readAllBytes());
        }
    }

    private static Font font(String name, byte[] bytes) throws IOException {
        try {
            return Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(bytes));
        } catch (FontFormatException e) {
            throw new IOException(name + " is no font that can be read", e);
        }
    }

    Font font(double size, boolean isStrong) {
        return (isStrong ? strong : regular).deriveFont((float) size);
    }

    /** The name of the family, as an SVG asks for it. */
    String family() {
        return regular.getFamily(Locale.ROOT);
    }

    @Override
    public double width(String text, double size, boolean isStrong) {
        return font(LARGE, isStrong).getStringBounds(text, EXACT).getWidth() * size / LARGE;
    }
}
