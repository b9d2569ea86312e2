package comparand.write.pdf;

import com.lowagie.text.pdf.BaseFont;
import comparand.document.Look;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/** The embedded faces: Source Sans 3, which has every sign the tables use and digits of one width. */
final class Fonts {

    private static final String FOLDER = "/comparand/write/fonts/";

    private final BaseFont regular;
    private final BaseFont strong;

    /** The faces of a house, or else those the tool brings. */
    Fonts(Optional<Look.Fonts> own) throws IOException {
        regular = own.isPresent()
                ? face(own.get().regular().name(), own.get().regular().bytes())
                : face("SourceSans3-Regular.ttf");
        strong = own.isPresent()
                ? face(own.get().strong().name(), own.get().strong().bytes())
                : face("SourceSans3-Semibold.ttf");
    }

    BaseFont regular() {
        return regular;
    }

    BaseFont strong() {
        return strong;
    }

    private static BaseFont face(String name) throws IOException {
        try (InputStream in = Fonts.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IOException("the font " + name + " is missing from the program");
            }
            return face(name, in.readAllBytes());
        }
    }

    private static BaseFont face(String name, byte[] file) throws IOException {
        var face = BaseFont.createFont(name, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false, file, null);
        // the list of glyphs that the library writes is not complete, and archives want it whole or not at all
        face.setIncludeCidSet(false);
        return face;
    }
}
