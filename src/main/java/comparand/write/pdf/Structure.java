package comparand.write.pdf;

import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfStructureElement;
import com.lowagie.text.pdf.PdfWriter;

/** The structure tree of a tagged PDF, and the marks that tie drawn content to it. */
final class Structure {

    private final PdfStructureElement document;

    Structure(PdfWriter writer) {
        document = new PdfStructureElement(writer.getStructureTreeRoot(), new PdfName("Document"));
    }

    PdfStructureElement section() {
        return under(document, "Sect");
    }

    static PdfStructureElement under(PdfStructureElement parent, String type) {
        return new PdfStructureElement(parent, new PdfName(type));
    }

    /** A table heading that says whether it heads a column or a row. */
    static PdfStructureElement heading(PdfStructureElement row, String scope) {
        var heading = under(row, "TH");
        var attributes = new PdfDictionary();
        attributes.put(PdfName.O, new PdfName("Table"));
        attributes.put(new PdfName("Scope"), new PdfName(scope));
        heading.put(PdfName.A, attributes);
        return heading;
    }

    /** A figure with its words and the room it takes, in points from the lower left corner of its page. */
    static PdfStructureElement figure(
            PdfStructureElement parent, String alternative, float left, float bottom, float right, float top) {
        var figure = under(parent, "Figure");
        figure.put(PdfName.ALT, new PdfString(alternative, PdfObject.TEXT_UNICODE));
        var attributes = new PdfDictionary();
        attributes.put(PdfName.O, new PdfName("Layout"));
        attributes.put(new PdfName("Placement"), new PdfName("Block"));
        attributes.put(PdfName.BBOX, new PdfArray(new float[] {left, bottom, right, top}));
        figure.put(PdfName.A, attributes);
        return figure;
    }

    /** Draws content that belongs to an element. */
    static void content(PdfContentByte canvas, PdfStructureElement element, Runnable draw) {
        canvas.beginMarkedContentSequence(element);
        draw.run();
        canvas.endMarkedContentSequence();
    }

    /** Draws what is not part of the text: rules, bands, running heads, repeated headings. */
    static void artifact(PdfContentByte canvas, Runnable draw) {
        canvas.beginMarkedContentSequence(new PdfName("Artifact"));
        draw.run();
        canvas.endMarkedContentSequence();
    }
}
