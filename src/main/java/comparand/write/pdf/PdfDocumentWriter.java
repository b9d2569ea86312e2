package comparand.write.pdf;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfOutline;
import com.lowagie.text.pdf.PdfStructureElement;
import com.lowagie.text.pdf.PdfWriter;
import comparand.document.Block.Paragraph;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Section;
import comparand.write.DocumentWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** Sets a document as a tagged PDF with bookmarks, on standing or lying pages; PDF/UA-1 and PDF/A-2a. */
public final class PdfDocumentWriter implements DocumentWriter {

    @Override
    public String extension() {
        return "pdf";
    }

    @Override
    public void write(Document document, OutputStream out) throws IOException {
        var bytes = new ByteArrayOutputStream();
        var sheet = Sheet.of(document);
        try (var pdf = new com.lowagie.text.Document(sheet.size(), 0, 0, 0, 0)) {
            var writer = PdfWriter.getInstance(pdf, bytes);
            DocumentProperties.announce(pdf, writer, document.edition());
            pdf.open();
            DocumentProperties.colours(writer);
            set(new Page(pdf, writer, sheet, document), new Structure(writer), document);
        } catch (DocumentException e) {
            throw new IOException("the PDF could not be set", e);
        }
        out.write(StableBytes.of(bytes.toByteArray()));
    }

    private static void set(Page page, Structure structure, Document document) {
        var type = page.type();
        titleBlock(page, type, structure.section(), document.edition());
        for (var section : document.sections()) {
            section(page, type, structure.section(), section);
        }
        page.close();
    }

    private static void titleBlock(Page page, Type type, PdfStructureElement section, Edition edition) {
        line(page, Structure.under(section, "P"), type.title(), edition.title());
        line(page, Structure.under(section, "P"), type.subtitle(), edition.subtitle());
        page.down(2);
        line(page, Structure.under(section, "P"), type.small(), edition.preparedBy() + " · " + edition.imprint(" · "));
        edition.marks().forEach(m -> line(page, Structure.under(section, "P"), type.subheading(), m));
        page.down(type.belowTitle());
    }

    private static void section(Page page, Type type, PdfStructureElement element, Section section) {
        var blocks = new BlockSetter(page, type, element);
        page.down(type.aboveHeading());
        if (!page.fits(together(page, type, blocks, section))) {
            page.turn();
        }
        bookmark(page, page.writer().getRootOutline(), section.heading());
        line(page, Structure.under(element, "H1"), type.heading(), section.heading());
        page.down(type.belowHeading());
        blocks.set(section.blocks());
    }

    /** What must stand on one page with a heading: all of a section of nothing but paragraphs, as long as a page holds it. */
    private static float together(Page page, Type type, BlockSetter blocks, Section section) {
        float heading = type.heading().leading() + type.belowHeading();
        float some = heading + type.fewestBelowHeading();
        float height = heading;
        for (var block : section.blocks()) {
            if (!(block instanceof Paragraph paragraph)) {
                return some;
            }
            height += blocks.height(paragraph);
        }
        return height <= page.room() ? height : some;
    }

    private static void line(Page page, PdfStructureElement element, TextStyle style, String text) {
        page.paragraph(element, style, style.lines(text, page.width()), 0);
    }

    private static void bookmark(Page page, PdfOutline under, String title) {
        new PdfOutline(under, new PdfDestination(PdfDestination.FITH, page.top()), title, true);
    }
}
