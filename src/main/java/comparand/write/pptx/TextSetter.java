package comparand.write.pptx;

import comparand.document.Edition;
import comparand.document.talk.layout.Box;
import comparand.document.talk.layout.Stage;
import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Locale;
import java.util.Optional;
import org.apache.poi.sl.usermodel.TextParagraph.TextAlign;
import org.apache.poi.sl.usermodel.TextShape.TextAutofit;
import org.apache.poi.sl.usermodel.VerticalAlignment;
import org.apache.poi.xslf.usermodel.XSLFShape;
import org.apache.poi.xslf.usermodel.XSLFTextParagraph;
import org.apache.poi.xslf.usermodel.XSLFTextRun;
import org.apache.poi.xslf.usermodel.XSLFTextShape;
import org.openxmlformats.schemas.drawingml.x2006.main.CTNonVisualDrawingProps;
import org.openxmlformats.schemas.drawingml.x2006.main.CTRegularTextRun;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextField;
import org.openxmlformats.schemas.presentationml.x2006.main.CTConnector;
import org.openxmlformats.schemas.presentationml.x2006.main.CTGraphicalObjectFrame;
import org.openxmlformats.schemas.presentationml.x2006.main.CTShape;

/** Text in shapes: its face, colour, size and language. */
final class TextSetter {

    static final Color ACCENT = new Color(0x0B6E6E);
    static final Color GREY = new Color(0x4A5568);

    private final Stage stage;
    private final String language;

    private final Optional<Date> stamp;

    TextSetter(Stage stage, Edition edition) {
        this.stage = stage;
        this.language = region(edition.language());
        this.stamp = Optional.of(
                Date.from(edition.date().atStartOfDay(ZoneOffset.UTC).toInstant()));
    }

    /** The day the report speaks of, in place of a clock. */
    Optional<Date> stamp() {
        return stamp;
    }

    /** Spelling checkers want a country: the words of the documents are British and German ones. */
    private static String region(String language) {
        return switch (language.toLowerCase(Locale.ROOT)) {
            case "en" -> "en-GB";
            case "de" -> "de-DE";
            default -> language;
        };
    }

    /** Empties a shape that is to hold text in this place. */
    void box(XSLFTextShape shape, Box box, VerticalAlignment upright, double inset) {
        shape.setAnchor(new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height()));
        shape.clearText();
        shape.setWordWrap(true);
        shape.setTextAutofit(TextAutofit.NONE);
        shape.setVerticalAlignment(upright);
        shape.setLeftInset(inset);
        shape.setRightInset(inset);
        shape.setTopInset(inset);
        shape.setBottomInset(inset);
    }

    /** A paragraph of one run. */
    XSLFTextRun line(XSLFTextShape shape, String text, double size, boolean strong, TextAlign align) {
        return run(paragraph(shape, align, 0), text, size, strong);
    }

    XSLFTextParagraph paragraph(XSLFTextShape shape, TextAlign align, double after) {
        var paragraph = shape.addNewTextParagraph();
        paragraph.setTextAlign(align);
        paragraph.setBullet(false);
        paragraph.setLeftMargin(0d);
        paragraph.setIndent(0d);
        paragraph.setSpaceBefore(0d);
        paragraph.setLineSpacing(100d);
        // negative: in points
        paragraph.setSpaceAfter(-after);
        return paragraph;
    }

    XSLFTextRun run(XSLFTextParagraph paragraph, String text, double size, boolean strong) {
        var run = paragraph.addNewTextRun();
        run.setText(text);
        run.setFontSize(size);
        run.setBold(strong);
        run.setFontColor(new Color(stage.ink()));
        if (stage.own()) {
            run.setFontFamily(stage.face());
        }
        language(run);
        return run;
    }

    void language(XSLFTextRun run) {
        if (run.getXmlObject() instanceof CTRegularTextRun text) {
            (text.isSetRPr() ? text.getRPr() : text.addNewRPr()).setLang(language);
        }
    }

    /** The number of the slide, kept right by the program that shows it. */
    void pageNumber(XSLFTextShape shape, double size) {
        var paragraph = paragraph(shape, TextAlign.RIGHT, 0);
        CTTextField field = paragraph.getXmlObject().addNewFld();
        field.setId("{6A1F0C5E-3B7D-4C52-9A54-0D9F6A3E7B10}");
        field.setType("slidenum");
        var look = field.addNewRPr();
        look.setLang(language);
        look.setSz((int) (size * 100));
        look.addNewSolidFill()
                .addNewSrgbClr()
                .setVal(new byte[] {(byte) GREY.getRed(), (byte) GREY.getGreen(), (byte) GREY.getBlue()});
        field.setT("‹#›");
    }

    /** Name and alternative text, for who cannot see the shape. */
    static void named(XSLFShape shape, String name, String alternative) {
        properties(shape).setName(name);
        if (!alternative.isBlank()) {
            properties(shape).setDescr(alternative);
        }
    }

    private static CTNonVisualDrawingProps properties(XSLFShape shape) {
        var xml = shape.getXmlObject();
        return xml instanceof CTShape s
                ? s.getNvSpPr().getCNvPr()
                : xml instanceof CTConnector c
                        ? c.getNvCxnSpPr().getCNvPr()
                        : ((CTGraphicalObjectFrame) xml).getNvGraphicFramePr().getCNvPr();
    }
}
