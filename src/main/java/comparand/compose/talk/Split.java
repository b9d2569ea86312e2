package comparand.compose.talk;

import comparand.compose.text.Run;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.talk.Part;
import comparand.document.talk.layout.Measure;
import comparand.document.talk.layout.Stage;
import java.util.ArrayList;
import java.util.List;

/** A table that is longer than a slide, over several slides, each with a title of its own and the headings again. */
final class Split {

    /** What is read aloud from near may be as small as this. */
    private static final double SMALL = 12;

    private static final double LARGER = 14;

    /** With larger text a table may take so many slides before the small one is taken. */
    private static final int SLIDES = 2;

    private final Run run;
    private final Measure measure;
    private final double room;

    /** For the masters that a talk stands on: those of a house leave less room than ours. */
    Split(Run run, boolean house) {
        var stage = Stage.plain("Arial");
        this.run = run;
        this.measure = new Measure(stage.lines(), stage.body().width());
        this.room = stage.body().height() * (house ? 0.8 : 1);
    }

    /**
     * A slide, or several of which the first keeps the id.
     *
     * @param draft its one part is replaced by the rows that stand on each
     */
    List<Draft> of(Draft draft, Table table) {
        var larger = chunks(table, LARGER);
        boolean readable =
                larger.size() <= SLIDES && measure.tooWide(table, LARGER).isEmpty();
        var chunks = readable ? larger : chunks(table, SMALL);
        var drafts = new ArrayList<Draft>();
        for (int i = 0; i < chunks.size(); i++) {
            var part = chunks.size() == 1
                    ? table
                    : new Table(table.id() + (i + 1), table.caption(), table.columns(), chunks.get(i), table.notes());
            var title = chunks.size() == 1
                    ? draft.title()
                    : run.words()
                            .say(
                                    "talk.part",
                                    "title",
                                    draft.title(),
                                    "number",
                                    String.valueOf(i + 1),
                                    "of",
                                    String.valueOf(chunks.size()));
            drafts.add(new Draft(
                    i == 0 ? draft.id() : draft.id() + "-" + (i + 1),
                    title,
                    List.of(new Part.Grid(part)),
                    draft.strip(),
                    draft.speech(),
                    true,
                    draft.published()));
        }
        return drafts;
    }

    /** As few slides as hold it, and all of them about as full. */
    private List<List<List<Cell>>> chunks(Table table, double size) {
        var fewest = chunks(table, size, room);
        for (double part = 0.3; part < 1; part += 0.05) {
            var even = chunks(table, size, part * room);
            if (even.size() == fewest.size()) {
                return even;
            }
        }
        return fewest;
    }

    private List<List<List<Cell>>> chunks(Table table, double size, double most) {
        var heights = measure.rows(table, size);
        var chunks = new ArrayList<List<List<Cell>>>();
        var chunk = new ArrayList<List<Cell>>();
        double used = heights.get(0);
        for (int r = 0; r < table.rows().size(); r++) {
            double height = heights.get(r + 1);
            if (!chunk.isEmpty() && used + height > most) {
                chunks.add(List.copyOf(chunk));
                chunk.clear();
                used = heights.get(0);
            }
            chunk.add(table.rows().get(r));
            used += height;
        }
        chunks.add(List.copyOf(chunk));
        return chunks;
    }
}
