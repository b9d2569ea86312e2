package comparand.write.pdf;

import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.io.InputStream;

/** The embedded faces: Source Sans 3, which has every sign the tables use and digits of one width. */
final class Fonts {

    private static final String FOLDER = "/comparand/write/fonts/";

    private final BaseFont regular;
    private final BaseFont strong;

    Fonts() throws IOException {
        regular = face("SourceSans3-Regular.ttf");
        strong = face("SourceSans3-Semibold.ttf");
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
            return BaseFont.createFont(name, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false, in.readAllBytes(), null);
        }
    }
}
