package comparand.write.html;

import comparand.document.Block;
import comparand.document.Block.Paragraph.Style;
import comparand.document.Inline;
import comparand.document.Section;
import comparand.write.figure.Faces;

/** Sets sections, block by block, in their order. */
final class Chapters {

    private final Anchors anchors;
    private final TableMarkup tables;
    private final FigureMarkup figures;
    private final Html html;

    Chapters(Anchors anchors, PageWords words, Faces faces, Html html) {
        this.anchors = anchors;
        this.tables = new TableMarkup(anchors, words, html);
        this.figures = new FigureMarkup(faces, html);
        this.html = html;
    }

    void write(Section section) {
        var id = anchors.of(section);
        html.open("section", "id", id, "aria-labelledby", id + "-h").line();
        html.element("h2", section.heading(), "id", id + "-h").line();
        var blocks = new Blocks(section.heading());
        section.blocks().forEach(b -> b.fold(blocks));
        blocks.endOfPoints();
        html.close().line();
    }

    /** The blocks of one section. */
    private final class Blocks implements Block.Cases<Html> {

        private final String section;

        /** The nearest heading above. */
        private String heading;

        private boolean withinPoints;

        Blocks(String section) {
            this.section = section;
            this.heading = section;
        }

        @Override
        public Html paragraph(Block.Paragraph paragraph) {
            return text(paragraph.style(), () -> words(paragraph.text(), paragraph.style()));
        }

        @Override
        public Html prose(Block.Prose prose) {
            return text(prose.style(), () -> prose.pieces().forEach(p -> inline(p, prose.style())));
        }

        @Override
        public Html heading(Block.Heading below) {
            endOfPoints();
            heading = below.text();
            return html.element("h3", below.text()).line();
        }

        @Override
        public Html table(Block.Table table) {
            endOfPoints();
            tables.write(table, section, heading);
            return html;
        }

        @Override
        public Html graph(Block.Graph graph) {
            endOfPoints();
            figures.write(graph);
            return html;
        }

        @Override
        public Html ladder(Block.Ladder ladder) {
            endOfPoints();
            html.open("details", "class", "ladder", "id", Anchors.of(ladder));
            html.element("summary", ladder.heading());
            if (!ladder.lead().isEmpty()) {
                html.element("p", ladder.lead());
            }
            html.open("ol");
            for (var rung : ladder.rungs()) {
                html.open("li").element("p", rung.kind(), "class", "kind").element("p", rung.text());
                if (!rung.formula().isEmpty()) {
                    html.element("p", rung.formula(), "class", "formula");
                }
                html.close();
            }
            return html.close().close().line();
        }

        /** Points that follow each other are one list. */
        private Html text(Style style, Runnable pieces) {
            if (style == Style.POINT && !withinPoints) {
                html.open("ul").line();
                withinPoints = true;
            } else if (style != Style.POINT) {
                endOfPoints();
            }
            switch (style) {
                case BODY -> html.open("p");
                case POINT -> html.open("li");
                case SMALL -> html.open("p", "class", "small");
                case REFERENCE -> html.open("p", "class", "reference");
            }
            pieces.run();
            return html.close().line();
        }

        void endOfPoints() {
            if (withinPoints) {
                html.close().line();
                withinPoints = false;
            }
        }

        /** What stands before the tab of a reference hangs before it. */
        private Html words(String text, Style style) {
            int tab = style == Style.REFERENCE ? text.indexOf('\t') : -1;
            if (tab >= 0) {
                html.element("span", text.substring(0, tab), "class", "hang").text(" ");
            }
            return html.text(text.substring(tab + 1));
        }

        private void inline(Inline piece, Style style) {
            piece.fold(
                    plain -> plain.slanted() ? html.element("i", plain.text()) : words(plain.text(), style),
                    held -> html.text(held.text()),
                    cited -> cited.raised() ? html.element("sup", cited.text()) : html.text(cited.text()));
        }
    }
}
