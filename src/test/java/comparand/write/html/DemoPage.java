package comparand.write.html;

import comparand.app.WholeRun;
import comparand.compose.text.Run;
import comparand.compose.text.Words;
import comparand.document.Block;
import comparand.document.Document;
import comparand.document.Section;
import comparand.document.exploration.Page;
import comparand.model.Audience;
import comparand.model.Comparand;
import comparand.support.DemoCharts;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A page of real length: the evidence table of the project's demo, its figures, and a ladder for every value. */
final class DemoPage {

    private static final Path DEMO = Path.of("evidence/dossiers/small-oxygenators.yaml");

    private DemoPage() {}

    static Page page() {
        var evidence = WholeRun.published(DEMO, Audience.EVIDENCE).documents().stream()
                .filter(d -> d.name().equals("evidence-table"))
                .findFirst()
                .orElseThrow();
        var sections = new ArrayList<>(evidence.sections());
        sections.add(new Section(
                "Figures",
                "Figures",
                Stream.concat(DemoCharts.all().stream(), Stream.of(DemoCharts.screening("en")))
                        .map(c -> (Block) new Block.Graph(c, c.message()))
                        .toList()));
        sections.add(new Section("Trail", "From print to table", ladders()));
        var document = new Document("page", Document.Form.SCREEN, evidence.edition(), evidence.look(), sections);
        return new Page(document, Samples.exploration());
    }

    private static List<Block> ladders() {
        var run = new Run(WholeRun.of(DEMO), Words.of("en"));
        return run.comparands().stream().map(c -> (Block) ladder(run, c)).toList();
    }

    private static Block.Ladder ladder(Run run, Comparand c) {
        var rungs = c.trail().stream()
                .map(s -> new Block.Rung(s.kind().toString(), run.trails().of(s), s.formula()))
                .toList();
        return new Block.Ladder(
                c.id().replaceAll("[^A-Za-z0-9._-]", "_"),
                "%s, %s: %s"
                        .formatted(
                                run.names().device(c.device()),
                                c.metric().name(),
                                run.summaries().withUnit(c)),
                run.names().locator(c),
                rungs);
    }

    static String html(Page page) {
        var out = new ByteArrayOutputStream();
        try {
            write(page, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    private static void write(Page page, OutputStream out) throws IOException {
        new HtmlWriter().write(page, out);
    }
}
