package comparand.compose.brief;

import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.document.Block;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Paragraph.Style;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.Section;
import java.util.ArrayList;
import java.util.List;

/** Short parts that follow each other, which share one heading: rows of a table, or small print behind a word in front. */
final class Notes {

    private final Run run;
    private final Cells cells;
    private final List<Block> blocks = new ArrayList<>();
    private final List<List<Cell>> rows = new ArrayList<>();

    Notes(Run run, Cells cells) {
        this.run = run;
        this.cells = cells;
    }

    void row(String heading, String text) {
        rows.add(List.of(Cell.words(heading), Cell.words(text)));
    }

    void print(String heading, String text) {
        endTable();
        blocks.add(new Paragraph(run.words().say("brief.print", "heading", heading, "text", text), Style.SMALL));
    }

    private void endTable() {
        if (!rows.isEmpty()) {
            blocks.add(new Table(
                    "BriefNotes" + blocks.size(),
                    "",
                    List.of(cells.name("col.subject", 22), cells.text("col.entry", 150)),
                    rows,
                    List.of()));
            rows.clear();
        }
    }

    /** Adds what was gathered, if anything was, as a section. */
    void close(List<Section> sections) {
        endTable();
        if (!blocks.isEmpty()) {
            sections.add(
                    new Section("notes-" + (sections.size() + 1), run.words().say("brief.notes"), blocks));
            blocks.clear();
        }
    }
}
