package comparand.write.pdf;

import com.lowagie.text.Document;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfBoolean;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfICCBased;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import comparand.document.Edition;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.TimeZone;

/**
 * What a PDF says of itself: title, language, dates, and the colours its numbers mean. As PDF/UA-1 (ISO 14289-1) and
 * PDF/A-2a (ISO 19005-2) want it.
 */
final class DocumentProperties {

    private static final String COLOURS = "sRGB IEC61966-2.1";

    private DocumentProperties() {}

    /** What is said before the document is opened. */
    static void announce(Document pdf, PdfWriter writer, Edition edition) {
        writer.setPdfVersion(PdfWriter.VERSION_1_7);
        writer.setTagged();
        writer.setViewerPreferences(PdfWriter.PageModeUseOutlines | PdfWriter.DisplayDocTitle);
        pdf.addTitle(edition.title());
        pdf.addSubject(edition.subtitle());
        pdf.addAuthor(edition.preparedBy());
        pdf.addCreator(edition.tool());
        pdf.addKeywords(Xmp.keywords(edition));
        var stamp = GregorianCalendar.from(edition.date().atStartOfDay(ZoneOffset.UTC));
        stamp.setTimeZone(TimeZone.getTimeZone("UTC"));
        var date = new PdfDate(stamp);
        writer.getInfo().put(PdfName.CREATIONDATE, date);
        writer.getInfo().put(PdfName.MODDATE, date);
        var id = new PdfString((edition.fingerprint() + edition.title()).getBytes(StandardCharsets.UTF_8));
        writer.getInfo().put(PdfName.FILEID, new PdfArray(List.of(id, id)));
        writer.getExtraCatalog().put(PdfName.LANG, new PdfString(edition.language()));
        var mark = new PdfDictionary();
        mark.put(new PdfName("Marked"), PdfBoolean.PDFTRUE);
        writer.getExtraCatalog().put(PdfName.MARKINFO, mark);
        writer.setXmpMetadata(Xmp.of(edition));
    }

    /** What the red, green and blue of the file mean: the library's own way writes an intent that archives do not know. */
    static void colours(PdfWriter writer) throws IOException {
        var profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB);
        var intent = new PdfDictionary(PdfName.OUTPUTINTENT);
        intent.put(PdfName.S, PdfName.GTS_PDFA1);
        intent.put(PdfName.OUTPUTCONDITIONIDENTIFIER, new PdfString(COLOURS));
        intent.put(PdfName.INFO, new PdfString(COLOURS));
        intent.put(
                PdfName.DESTOUTPUTPROFILE,
                writer.addToBody(new PdfICCBased(profile)).getIndirectReference());
        writer.getExtraCatalog().put(PdfName.OUTPUTINTENTS, new PdfArray(intent));
    }
}
