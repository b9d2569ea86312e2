package comparand.write.text;

import comparand.document.Block;
import comparand.document.Block.Paragraph.Style;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.Document;
import comparand.document.Section;
import comparand.write.DocumentWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Sets a document as plain text in UTF-8: short lines, points with a dash, blank lines between paragraphs. */
public final class PlainTextWriter implements DocumentWriter {

    /** Longer lines are broken anew by mail programs. */
    private static final int WIDTH = 76;

    @Override
    public String extension() {
        return "txt";
    }

    @Override
    public void write(Document document, OutputStream out) throws IOException {
        var paragraphs = new ArrayList<String>();
        for (var section : document.sections()) {
            section(section, paragraphs);
        }
        // a mail is copied and searched: plain blanks only
        var text = String.join("\n\n", paragraphs).replace('\u00a0', ' ') + "\n";
        out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    private static void section(Section section, List<String> paragraphs) {
        paragraphs.add(wrapped(section.heading(), "", ""));
        for (var block : section.blocks()) {
            block.fold(new Block.Cases<Boolean>() {
                @Override
                public Boolean paragraph(Block.Paragraph paragraph) {
                    return text(paragraph.text(), paragraph.style());
                }

                @Override
                public Boolean prose(Block.Prose prose) {
                    return text(prose.text(), prose.style());
                }

                @Override
                public Boolean heading(Block.Heading heading) {
                    return paragraphs.add(wrapped(heading.text(), "", ""));
                }

                @Override
                public Boolean table(Table table) {
                    table.rows().forEach(row -> paragraphs.add(row(table, row)));
                    table.notes().forEach(n -> paragraphs.add(wrapped(n.mark() + " " + n.text(), "", "  ")));
                    return true;
                }

                @Override
                public Boolean graph(Block.Graph graph) {
                    return paragraphs.add(wrapped(graph.caption(), "", ""));
                }

                private Boolean text(String text, Style style) {
                    boolean point = style == Style.POINT;
                    return paragraphs.add(wrapped(text, point ? "- " : "", point ? "  " : ""));
                }
            });
        }
    }

    /** Each cell on a line of its own behind its heading. */
    private static String row(Table table, List<Cell> row) {
        var lines = new ArrayList<String>();
        for (int c = 0; c < row.size(); c++) {
            lines.add(
                    wrapped(table.columns().get(c).heading() + ": " + row.get(c).shown(), "", "  "));
        }
        return String.join("\n", lines);
    }

    private static String wrapped(String text, String first, String next) {
        var lines = new ArrayList<String>();
        var line = new StringBuilder(first);
        boolean empty = true;
        for (var word : text.split("[ \n]+", -1)) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(next);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        lines.add(line.toString());
        return String.join("\n", lines);
    }
}
