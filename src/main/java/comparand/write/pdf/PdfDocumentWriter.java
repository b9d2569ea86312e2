package comparand.write.pdf;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfBoolean;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfOutline;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfStructureElement;
import com.lowagie.text.pdf.PdfWriter;
import comparand.document.Block;
import comparand.document.Block.Heading;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Table;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Section;
import comparand.write.DocumentWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.TimeZone;

/** Sets a document as a tagged PDF with bookmarks, A4 landscape. */
public final class PdfDocumentWriter implements DocumentWriter {

    /** Longer lines than this are hard to follow. */
    private static final float MEASURE = 640;

    private static final float HEADING = 19;
    private static final float HEADING_AND_SOME = 90;

    @Override
    public String extension() {
        return "pdf";
    }

    @Override
    public void write(Document document, OutputStream out) throws IOException {
        var bytes = new ByteArrayOutputStream();
        try (var pdf = new com.lowagie.text.Document(Page.SIZE, 0, 0, 0, 0)) {
            var writer = PdfWriter.getInstance(pdf, bytes);
            writer.setPdfVersion(PdfWriter.VERSION_1_7);
            writer.setTagged();
            writer.setViewerPreferences(PdfWriter.PageModeUseOutlines | PdfWriter.DisplayDocTitle);
            properties(pdf, writer, document.edition());
            writer.setXmpMetadata(Xmp.of(document.edition()));
            pdf.open();
            set(pdf, writer, document);
        } catch (DocumentException e) {
            throw new IOException("the PDF could not be set", e);
        }
        out.write(StableBytes.of(bytes.toByteArray()));
    }

    private static void set(com.lowagie.text.Document pdf, PdfWriter writer, Document document) throws IOException {
        var type = new Type(new Fonts());
        var page = new Page(pdf, writer, document.edition(), type);
        var structure = new Structure(writer);
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
        page.down(6);
    }

    private static void section(Page page, Type type, PdfStructureElement element, Section section) {
        page.down(8);
        if (!page.fits(together(page, type, section))) {
            page.turn();
        }
        bookmark(page, page.writer().getRootOutline(), section.heading());
        line(page, Structure.under(element, "H1"), type.heading(), section.heading());
        page.down(2);
        var blocks = section.blocks();
        for (int b = 0; b < blocks.size(); b++) {
            block(
                    page,
                    type,
                    element,
                    blocks.get(b),
                    b + 1 < blocks.size() ? beginning(page, type, blocks.get(b + 1)) : 0);
        }
    }

    /** How much of a block stands on one page with the heading above it. */
    private static float beginning(Page page, Type type, Block block) {
        return block.fold(new Block.Cases<Float>() {
            @Override
            public Float paragraph(Paragraph paragraph) {
                return 3 * style(type, paragraph).leading();
            }

            @Override
            public Float prose(Block.Prose prose) {
                return paragraph(plain(prose));
            }

            @Override
            public Float heading(Heading heading) {
                return 0f;
            }

            @Override
            public Float table(Table table) {
                return caption(page, type, table).size() * type.small().leading()
                        + TableSetter.beginning(page, type, table);
            }

            @Override
            public Float graph(Block.Graph graph) {
                return 0f;
            }
        });
    }

    /** Pages need neither bookmarks at numbers nor fields. */
    private static Paragraph plain(Block.Prose prose) {
        return new Paragraph(prose.text(), prose.style());
    }

    /** What must stand on one page with a heading: all of a section of nothing but paragraphs, as long as a page holds it. */
    private static float together(Page page, Type type, Section section) {
        float height = HEADING;
        for (var block : section.blocks()) {
            if (!(block instanceof Paragraph paragraph)) {
                return HEADING_AND_SOME;
            }
            height +=
                    lines(page, type, paragraph).size() * style(type, paragraph).leading() + after(paragraph);
        }
        return height <= page.room() ? height : HEADING_AND_SOME;
    }

    private static void block(Page page, Type type, PdfStructureElement element, Block block, float next) {
        Runnable set = block.fold(new Block.Cases<Runnable>() {
            @Override
            public Runnable paragraph(Paragraph paragraph) {
                return () -> PdfDocumentWriter.paragraph(page, type, element, paragraph);
            }

            @Override
            public Runnable prose(Block.Prose prose) {
                return paragraph(plain(prose));
            }

            @Override
            public Runnable heading(Heading heading) {
                return () -> PdfDocumentWriter.heading(page, type, element, heading, next);
            }

            @Override
            public Runnable table(Table table) {
                return () -> PdfDocumentWriter.table(page, type, element, table);
            }

            @Override
            public Runnable graph(Block.Graph graph) {
                throw new IllegalStateException("no figure is set on pages yet");
            }
        });
        set.run();
    }

    private static void paragraph(Page page, Type type, PdfStructureElement element, Paragraph paragraph) {
        var style = style(type, paragraph);
        var lines = lines(page, type, paragraph);
        if (!page.fits(Math.min(3, lines.size()) * style.leading())) {
            page.turn();
        }
        if (isPoint(paragraph)) {
            float base = page.y() - style.leading() * 0.75f;
            Structure.artifact(page.canvas(), () -> page.show(style, "•", page.left(), base));
        }
        page.paragraph(Structure.under(element, "P"), style, lines, indent(paragraph));
        page.down(after(paragraph));
    }

    private static boolean isPoint(Paragraph paragraph) {
        return paragraph.style() == Paragraph.Style.POINT;
    }

    private static TextStyle style(Type type, Paragraph paragraph) {
        return paragraph.style() == Paragraph.Style.SMALL ? type.small() : type.body();
    }

    private static float indent(Paragraph paragraph) {
        return isPoint(paragraph) ? 10 : 0;
    }

    private static float after(Paragraph paragraph) {
        return isPoint(paragraph) ? 2 : 4;
    }

    private static List<String> lines(Page page, Type type, Paragraph paragraph) {
        return Wrapped.lines(
                paragraph.text(), style(type, paragraph), Math.min(page.width(), MEASURE) - indent(paragraph));
    }

    private static void heading(Page page, Type type, PdfStructureElement element, Heading heading, float next) {
        page.down(4);
        if (!page.fits(type.subheading().leading() + 2 + next)) {
            page.turn();
        }
        line(page, Structure.under(element, "H2"), type.subheading(), heading.text());
        page.down(2);
    }

    private static void table(Page page, Type type, PdfStructureElement element, Table table) {
        if (!table.caption().isEmpty()) {
            page.paragraph(Structure.under(element, "P"), type.small(), caption(page, type, table), 0);
        }
        TableSetter.set(page, type, element, table);
    }

    private static List<String> caption(Page page, Type type, Table table) {
        return table.caption().isEmpty() ? List.of() : Wrapped.lines(table.caption(), type.small(), page.width());
    }

    private static void line(Page page, PdfStructureElement element, TextStyle style, String text) {
        page.paragraph(element, style, Wrapped.lines(text, style, page.width()), 0);
    }

    private static void bookmark(Page page, PdfOutline under, String title) {
        new PdfOutline(under, new PdfDestination(PdfDestination.FITH, page.top()), title, true);
    }

    private static void properties(com.lowagie.text.Document pdf, PdfWriter writer, Edition edition) {
        pdf.addTitle(edition.title());
        pdf.addSubject(edition.subtitle());
        pdf.addAuthor(edition.preparedBy());
        pdf.addCreator(edition.tool());
        pdf.addKeywords(String.join(" ", List.of(edition.fingerprint(), String.join(" ", edition.marks()))));
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
    }
}
