package comparand.write.html;

import comparand.document.Block;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Look;
import comparand.document.Section;
import comparand.document.exploration.Exploration;
import comparand.document.exploration.Page;
import comparand.document.exploration.QuestionShown;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/** Pages of a few blocks. */
final class Samples {

    private Samples() {}

    static Exploration exploration(String... texts) {
        var run = new Exploration.RunShown(
                "dossier", "Title", "2026-11-20", "tool", "0123456789", "draft", "en", '.', List.of(texts), "rider");
        var words = new TreeMap<>(Map.of(
                "page.skip", "Skip to the content",
                "page.contents", "Contents",
                "page.wide-table", "Table: {table}"));
        return new Exploration(Exploration.FORMAT, run, words, List.of(), List.of(), List.of());
    }

    /** A question without a margin or pairs, whose pool stands in no row. */
    static QuestionShown question() {
        var pool = new QuestionShown.PoolShown("ours", "Table", OptionalInt.empty(), List.of(), List.of(), List.of());
        return new QuestionShown(
                "metric",
                "Metric",
                "Asks?",
                "Name",
                "mmHg",
                "mmHg",
                Optional.empty(),
                List.of(),
                "Table",
                new QuestionShown.Columns(4, 5, 6, 7, 8),
                "Grid",
                3,
                List.of(),
                new QuestionShown.Summary("Questions", 0, 1, 2, 3),
                List.of(),
                List.of(pool));
    }

    static Edition edition(String title, String... marks) {
        return new Edition(
                title,
                "A question?",
                LocalDate.of(2026, 11, 20),
                "Somebody",
                "comparand 0",
                "01234567",
                "draft",
                List.of(marks),
                List.of("A caution."),
                "en");
    }

    static Page page(Edition edition, Block... blocks) {
        var section = new Section("Name", "Heading", List.of(blocks));
        return new Page(
                new Document("page", Document.Form.SCREEN, edition, Look.PLAIN, List.of(section)), exploration());
    }
}
