package comparand.write.pdf;

import com.lowagie.text.pdf.BaseFont;
import comparand.document.Look;
import comparand.write.figure.Measure;
import java.io.IOException;

/** The faces of a document, ready to be embedded. */
final class Fonts implements Measure {

    private final BaseFont regular;
    private final BaseFont strong;

    Fonts(Look.Fonts files) throws IOException {
        regular = face(files.regular());
        strong = face(files.strong());
    }

    BaseFont regular() {
        return regular;
    }

    BaseFont strong() {
        return strong;
    }

    @Override
    public double width(String text, double size, boolean isStrong) {
        return (isStrong ? strong : regular).getWidthPoint(text, (float) size);
    }

    private static BaseFont face(Look.Content file) throws IOException {
        var face = BaseFont.createFont(file.name(), BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false, file.bytes(), null);
        // the list of glyphs that the library writes is not complete, and archives want it whole or not at all
        face.setIncludeCidSet(false);
        return face;
    }
}
