package comparand.write.docx;

import comparand.document.Block;
import comparand.document.Inline;
import org.apache.poi.xwpf.usermodel.VerticalAlign;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFRun;

/** Sets paragraphs: text, bookmarks, references. */
final class RunningText {

    private final XWPFDocument file;
    private final Bookmarks bookmarks;

    RunningText(XWPFDocument file, Bookmarks bookmarks) {
        this.file = file;
        this.bookmarks = bookmarks;
    }

    XWPFParagraph paragraph(String style) {
        var paragraph = file.createParagraph();
        paragraph.setStyle(style);
        return paragraph;
    }

    void text(String style, String text) {
        run(paragraph(style), text);
    }

    void heading(String section, String text, boolean onNewPage) {
        var paragraph = paragraph("Heading1");
        if (onNewPage) {
            paragraph.setPageBreak(true);
        }
        bookmarks.about(paragraph.getCTP(), Bookmarks.of("section", section), () -> run(paragraph, text));
    }

    void prose(Block.Prose prose) {
        var paragraph = paragraph(StyleSheet.of(prose.style()));
        bookmarks.about(
                paragraph.getCTP(), prose.name(), () -> prose.pieces().forEach(piece -> piece(paragraph, piece)));
    }

    private void piece(XWPFParagraph paragraph, Inline piece) {
        Runnable set = piece.fold(
                plain -> () -> slanted(paragraph, plain),
                held -> () -> bookmarks.about(paragraph.getCTP(), held.name(), () -> run(paragraph, held.text())),
                cited -> () -> {
                    var run = paragraph.createRun();
                    run.setText(cited.text());
                    if (cited.raised()) {
                        run.setSubscript(VerticalAlign.SUPERSCRIPT);
                    }
                });
        set.run();
    }

    private static void slanted(XWPFParagraph paragraph, Inline.Plain plain) {
        var run = paragraph.createRun();
        tabbed(run, plain.text());
        if (plain.slanted()) {
            run.setItalic(true);
        }
    }

    static void run(XWPFParagraph paragraph, String text) {
        tabbed(paragraph.createRun(), text);
    }

    private static void tabbed(XWPFRun run, String text) {
        var parts = text.split("\t", -1);
        for (int i = 0; i < parts.length; i++) {
            if (i > 0) {
                run.addTab();
            }
            if (!parts[i].isEmpty()) {
                run.setText(parts[i], i);
            }
        }
    }
}
