package comparand.write.pdf;

import com.lowagie.text.pdf.PdfStructureElement;
import comparand.document.Block;
import comparand.document.Block.Graph;
import comparand.document.Block.Heading;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Prose;
import comparand.document.Block.Table;
import java.util.List;

/** Sets the blocks of one section, each with what must stand on one page with its beginning. */
final class BlockSetter {

    /** Longer lines than this are hard to follow. */
    private static final float MEASURE = 640;

    private static final float BULLET = 10;

    private final Page page;
    private final Type type;
    private final PdfStructureElement element;

    BlockSetter(Page page, Type type, PdfStructureElement element) {
        this.page = page;
        this.type = type;
        this.element = element;
    }

    void set(List<Block> blocks) {
        for (int b = 0; b < blocks.size(); b++) {
            float next = b + 1 < blocks.size() ? beginning(blocks.get(b + 1)) : 0;
            blocks.get(b).fold(new Setting(next)).run();
        }
    }

    /** How much of a block stands on one page with the heading above it. */
    float beginning(Block block) {
        return block.fold(new Beginning());
    }

    /** How high a paragraph is, with what is left free below it. */
    float height(Paragraph paragraph) {
        return lines(paragraph).size() * style(paragraph).leading() + after(paragraph);
    }

    private final class Beginning implements Block.Cases<Float> {
        @Override
        public Float paragraph(Paragraph paragraph) {
            return 3 * style(paragraph).leading();
        }

        @Override
        public Float prose(Prose prose) {
            return paragraph(plain(prose));
        }

        @Override
        public Float heading(Heading heading) {
            return 0f;
        }

        @Override
        public Float table(Table table) {
            return caption(table.caption()).size() * type.small().leading() + TableSetter.beginning(page, type, table);
        }

        @Override
        public Float graph(Graph graph) {
            return new GraphSetter(page, type, graph).height();
        }
    }

    private final class Setting implements Block.Cases<Runnable> {

        private final float next;

        Setting(float next) {
            this.next = next;
        }

        @Override
        public Runnable paragraph(Paragraph paragraph) {
            return () -> set(paragraph);
        }

        @Override
        public Runnable prose(Prose prose) {
            return () -> set(plain(prose));
        }

        @Override
        public Runnable heading(Heading heading) {
            return () -> set(heading, next);
        }

        @Override
        public Runnable table(Table table) {
            return () -> {
                if (!table.caption().isEmpty()) {
                    page.paragraph(Structure.under(element, "P"), type.small(), caption(table.caption()), 0);
                }
                TableSetter.set(page, type, element, table);
            };
        }

        @Override
        public Runnable graph(Graph graph) {
            return () -> new GraphSetter(page, type, graph).set(element);
        }
    }

    /** Pages need neither bookmarks at numbers nor fields. */
    private static Paragraph plain(Prose prose) {
        return new Paragraph(prose.text(), prose.style());
    }

    private void set(Paragraph paragraph) {
        var style = style(paragraph);
        var lines = lines(paragraph);
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

    private void set(Heading heading, float next) {
        page.down(type.aboveSubheading());
        if (!page.fits(type.subheading().leading() + 2 + next)) {
            page.turn();
        }
        page.paragraph(
                Structure.under(element, "H2"),
                type.subheading(),
                type.subheading().lines(heading.text(), page.width()),
                0);
        page.down(type.belowHeading());
    }

    private static boolean isPoint(Paragraph paragraph) {
        return paragraph.style() == Paragraph.Style.POINT;
    }

    private TextStyle style(Paragraph paragraph) {
        return paragraph.style() == Paragraph.Style.SMALL ? type.small() : type.body();
    }

    private static float indent(Paragraph paragraph) {
        return isPoint(paragraph) ? BULLET : 0;
    }

    private float after(Paragraph paragraph) {
        return isPoint(paragraph) ? type.belowPoint() : type.belowParagraph();
    }

    private List<String> lines(Paragraph paragraph) {
        return style(paragraph).lines(paragraph.text(), Math.min(page.width(), MEASURE) - indent(paragraph));
    }

    private List<String> caption(String caption) {
        return caption.isEmpty() ? List.of() : type.small().lines(caption, page.width());
    }
}
