package comparand.write.pdf;

import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfStructureElement;
import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.write.Typefaces;
import java.awt.Color;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The page being set: where the next line goes, and what stands at head and foot of every page. */
final class Page {

    private static final float NUMBER_WIDTH = 60;
    /** Between the title and the mark in the running head. */
    private static final float GAP = 16;
    /** The base lines of the running head and foot, from the edges of the paper. */
    private static final float HEAD = 26;

    private static final float FOOT = 22;

    private final com.lowagie.text.Document pdf;
    private final PdfWriter writer;
    private final Sheet sheet;
    private final Edition edition;
    private final String foot;
    private final Type type;
    private final List<PdfTemplate> numbers = new ArrayList<>();
    private float y;

    Page(com.lowagie.text.Document pdf, PdfWriter writer, Sheet sheet, Document document) throws IOException {
        this.pdf = pdf;
        this.writer = writer;
        this.sheet = sheet;
        this.edition = document.edition();
        this.foot = Stream.of(edition.imprint(" · "), document.look().house())
                .filter(t -> !t.isEmpty())
                .collect(Collectors.joining(" · "));
        this.type = new Type(new Fonts(Typefaces.of(document.look().fonts())), sheet.compact());
        begin();
    }

    Type type() {
        return type;
    }

    float left() {
        return sheet.margin();
    }

    float width() {
        return sheet.size().getWidth() - 2 * sheet.margin();
    }

    float y() {
        return y;
    }

    /** Where bookmarks of what comes next should lead. */
    float top() {
        return y + 14;
    }

    PdfContentByte canvas() {
        return writer.getDirectContent();
    }

    PdfWriter writer() {
        return writer;
    }

    boolean fits(float height) {
        return y - height >= sheet.bottom();
    }

    /** The room of an empty page. */
    float room() {
        return sheet.size().getHeight() - sheet.top() - sheet.bottom();
    }

    void down(float by) {
        y -= by;
    }

    void turn() {
        pdf.newPage();
        begin();
    }

    private void begin() {
        y = sheet.size().getHeight() - sheet.top();
        Structure.artifact(canvas(), this::headAndFoot);
    }

    private void headAndFoot() {
        var small = type.foot();
        float head = sheet.size().getHeight() - HEAD;
        var marks = String.join(" ", edition.marks());
        float beside = width() - type.footStrong().width(marks) - GAP;
        // a long title takes a second line above; all of it stands on the first page
        var title = small.lines(edition.title(), beside);
        var shown = title.size() > 2 ? List.of(title.get(0), title.get(1) + "\u2026") : title;
        for (int i = 0; i < shown.size(); i++) {
            show(small, shown.get(i), left(), head + (shown.size() - 1 - i) * small.leading());
        }
        show(type.footStrong(), marks, left() + width() - type.footStrong().width(marks), head);
        rule(head - 5, TextStyle.RULE, 0.5f);
        show(small, foot, left(), FOOT);
        // "page / pages", filled in when the number of pages is known
        var number = canvas().createTemplate(NUMBER_WIDTH, 12);
        numbers.add(number);
        canvas().addTemplate(number, left() + width() - NUMBER_WIDTH, FOOT);
    }

    /** Fills in the page numbers, flush right. */
    void close() {
        var style = type.foot();
        for (int i = 0; i < numbers.size(); i++) {
            var text = (i + 1) + " / " + numbers.size();
            var number = numbers.get(i);
            number.beginText();
            number.setColorFill(style.ink());
            number.setFontAndSize(style.face(), style.size());
            number.setTextMatrix(NUMBER_WIDTH - style.width(text), 0);
            number.showText(text);
            number.endText();
        }
    }

    void show(TextStyle style, String text, float x, float base) {
        if (text.isEmpty()) {
            return;
        }
        var canvas = canvas();
        canvas.beginText();
        canvas.setColorFill(style.ink());
        canvas.setFontAndSize(style.face(), style.size());
        canvas.setTextMatrix(x, base);
        canvas.showText(text);
        canvas.endText();
    }

    void rule(float at, Color ink, float thickness) {
        var canvas = canvas();
        canvas.setColorStroke(ink);
        canvas.setLineWidth(thickness);
        canvas.moveTo(left(), at);
        canvas.lineTo(left() + width(), at);
        canvas.stroke();
    }

    void band(float x, float bottom, float width, float height, Color ink) {
        var canvas = canvas();
        canvas.setColorFill(ink);
        canvas.rectangle(x, bottom, width, height);
        canvas.fill();
    }

    /** Sets wrapped text as one element, over as many pages as it needs. */
    void paragraph(PdfStructureElement element, TextStyle style, List<String> lines, float indent) {
        for (var line : lines) {
            if (!fits(style.leading())) {
                turn();
            }
            down(style.leading());
            float base = y + style.leading() * 0.25f;
            Structure.content(canvas(), element, () -> show(style, line, left() + indent, base));
        }
    }
}
