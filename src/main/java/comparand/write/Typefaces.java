package comparand.write;

import comparand.document.Look;
import java.io.IOException;
import java.util.Optional;

/**
 * The files of the two faces that are embedded: those of a house, or else Source Sans 3, which has every sign the tables use
 * and digits of one width.
 */
public final class Typefaces {

    private static final String FOLDER = "/comparand/write/fonts/";

    private Typefaces() {}

    /** The faces of a house, or else those the tool brings. */
    public static Look.Fonts of(Optional<Look.Fonts> own) throws IOException {
        return own.isPresent()
                ? own.get()
                : new Look.Fonts(brought("SourceSans3-Regular.ttf"), brought("SourceSans3-Semibold.ttf"));
    }

    private static Look.Content brought(String name) throws IOException {
        try (var in = Typefaces.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IOException("the font " + name + " is missing from the program");
            }
            return new Look.Content(name, in.readAllBytes());
        }
    }
}
