package comparand.write.docx;

import comparand.document.Block;
import comparand.document.Block.Table;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.write.DocumentWriter;
import comparand.write.office.FileProperties;
import comparand.write.office.NoClock;
import java.io.IOException;
import java.io.OutputStream;
import org.apache.poi.xwpf.usermodel.XWPFDocument;

/**
 * Sets a document as text that somebody goes on writing: styles with outline levels, captions that count, bookmarks about
 * what a later run must find again, tables whose headings repeat.
 */
public final class TextWriter implements DocumentWriter {

    /** Wider tables than this, in characters, are set on lying pages, with the section they belong to. */
    private static final double MOST_STANDING = 125;

    @Override
    public String extension() {
        return "docx";
    }

    @Override
    public void write(Document document, OutputStream out) throws IOException {
        try (var file = new XWPFDocument()) {
            StyleSheet.into(file, document.look(), document.edition().language());
            new Text(file, document).set();
            FileProperties.set(file, document.edition());
            file.getProperties()
                    .getCoreProperties()
                    .setKeywords(document.edition().fingerprint());
            NoClock.during(() -> file.write(out));
        }
    }

    /** One text on its way to the file. */
    private static final class Text {

        private final Document document;
        private final Pages pages;
        private final RunningText running;
        private final TextTable tables;
        private final Captions captions;
        private final Picture picture;

        Text(XWPFDocument file, Document document) throws IOException {
            this.document = document;
            this.pages = new Pages(file, document.look(), document.edition());
            var bookmarks = new Bookmarks();
            this.running = new RunningText(file, bookmarks);
            this.captions = new Captions(running, bookmarks);
            this.tables = new TextTable(file, running);
            this.picture = new Picture(document.look());
        }

        void set() {
            titleBlock(document.edition());
            for (var section : document.sections()) {
                pages.lie(section.blocks().stream().anyMatch(Text::isWide));
                running.heading(section.name(), section.heading(), section.onNewPage() && !pages.isFresh());
                section.blocks().forEach(this::block);
                pages.used();
            }
            pages.end();
        }

        private void titleBlock(Edition edition) {
            running.text("Title", edition.title());
            running.text("Subtitle", edition.subtitle());
            running.text("Imprint", edition.preparedBy() + " · " + edition.imprint(" · "));
            edition.marks().forEach(m -> running.text("Mark", m));
            pages.used();
        }

        private static boolean isWide(Block block) {
            return block instanceof Table table
                    && table.columns().stream().mapToDouble(Block.Column::width).sum() > MOST_STANDING;
        }

        private void block(Block block) {
            Runnable set = block.fold(new Block.Cases<Runnable>() {
                @Override
                public Runnable paragraph(Block.Paragraph paragraph) {
                    return () -> running.text(StyleSheet.of(paragraph.style()), paragraph.text());
                }

                @Override
                public Runnable prose(Block.Prose prose) {
                    return () -> running.prose(prose);
                }

                @Override
                public Runnable heading(Block.Heading heading) {
                    return () -> running.text("Heading2", heading.text());
                }

                @Override
                public Runnable table(Table table) {
                    return () -> {
                        captions.above(table.id(), table.caption());
                        tables.set(table, pages.width());
                    };
                }

                @Override
                public Runnable graph(Block.Graph graph) {
                    return () -> {
                        picture.set(running.paragraph("Figure"), graph, pages.width());
                        captions.below(Bookmarks.of("figure", graph.chart().id()), graph.caption());
                    };
                }
            });
            set.run();
        }
    }
}
