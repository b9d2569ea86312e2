package comparand.write.docx;

import comparand.document.Block;
import comparand.document.Look;
import java.io.IOException;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.apache.poi.xwpf.usermodel.XWPFAbstractNum;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.xmlbeans.XmlException;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTNumbering;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.NumberingDocument;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.StylesDocument;

/** The styles and lists of text documents, from the files beside this class. */
final class StyleSheet {

    /** Texts in a language without a country are spelt as in these. */
    private static final Map<String, String> COUNTRIES = Map.of("en", "en-GB", "de", "de-DE");

    private StyleSheet() {}

    static void into(XWPFDocument file, Look look, String language) throws IOException {
        try {
            var styles = resource("styles.xml")
                    .replace("{face}", escaped(look.face()))
                    .replace("{language}", escaped(COUNTRIES.getOrDefault(language, language)));
            file.createStyles().setStyles(StylesDocument.Factory.parse(styles).getStyles());
            lists(
                    file,
                    NumberingDocument.Factory.parse(resource("numbering.xml")).getNumbering());
        } catch (XmlException e) {
            throw new IllegalStateException("the styles of text documents cannot be read", e);
        }
    }

    private static void lists(XWPFDocument file, CTNumbering numbering) {
        var lists = file.createNumbering();
        for (var list : numbering.getAbstractNumArray()) {
            lists.addAbstractNum(new XWPFAbstractNum(list));
        }
        for (var number : numbering.getNumArray()) {
            BigInteger of = number.getAbstractNumId().getVal();
            lists.addNum(of, number.getNumId());
        }
    }

    /** The style of a paragraph. */
    static String of(Block.Paragraph.Style style) {
        return switch (style) {
            case BODY -> "Normal";
            case POINT -> "ListBullet";
            case SMALL -> "Remark";
            case REFERENCE -> "Reference";
        };
    }

    private static String resource(String name) throws IOException {
        try (var in = StyleSheet.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("there is no " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
    }
}
