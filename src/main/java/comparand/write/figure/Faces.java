package comparand.write.figure;

import comparand.document.Look;
import comparand.write.Typefaces;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;

/** The two type faces figures are drawn in: those of a house, or else Source Sans 3. */
public final class Faces implements Measure {

    /** Widths are measured large, without fitting to pixels, so that they scale. */
    private static final float LARGE = 1000;

    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

    private final Font regular;
    private final Font strong;

    private Faces(Font regular, Font strong) {
        this.regular = regular;
        this.strong = strong;
    }

    public static Faces of(Optional<Look.Fonts> own) throws IOException {
        var files = Typefaces.of(own);
        return new Faces(font(files.regular()), font(files.strong()));
    }

    private static Font font(Look.Content file) throws IOException {
        try {
            return Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(file.bytes()));
        } catch (FontFormatException e) {
            throw new IOException(file.name() + " is no font that can be read", e);
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
