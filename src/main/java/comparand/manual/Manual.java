package comparand.manual;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.diag.Suggest;
import comparand.manual.example.Bench;
import comparand.manual.example.Story;
import comparand.manual.example.Tool;
import comparand.metric.Catalogue;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/**
 * The manual, as a folder of pages and as text.
 *
 * @param version name and version of the tool
 * @param schemas JSON Schemas of records by file name
 * @param commands every command, in the order of the help
 * @param tool the command line
 */
public record Manual(String version, Map<String, String> schemas, List<CommandText> commands, Tool tool) {

    private static final String DEMO = "evidence";

    public Manual {
        schemas = new TreeMap<>(schemas);
        commands = List.copyOf(commands);
    }

    /** The names of all findings. */
    public static Collection<String> codes() {
        return Findings.all().keySet();
    }

    /** The finding a mistyped name is nearest to. */
    public static Optional<String> nearest(String code) {
        return Suggest.nearest(code, codes());
    }

    /** The page of a finding as text; empty if there is no such finding. Its example is run. */
    public Optional<String> explain(String code) throws IOException {
        var finding = Findings.all().get(code);
        if (finding == null) {
            return Optional.empty();
        }
        try (var bench = new Bench(tool)) {
            return Optional.of(FindingText.of(FindingShown.of(finding, bench)));
        }
    }

    /** Writes all pages into a folder; gives how many there are. */
    public int write(Path folder) throws IOException {
        List<Page> pages;
        try (var bench = new Bench(tool)) {
            pages = pages(bench);
        }
        var frame = new Frame(version, pages);
        for (var page : pages) {
            write(folder.resolve(page.path()), frame.of(page).getBytes(StandardCharsets.UTF_8));
        }
        for (var file : Look.files().entrySet()) {
            write(folder.resolve("style").resolve(file.getKey()), file.getValue());
        }
        return pages.size();
    }

    private List<Page> pages(Bench bench) throws IOException {
        var unpacked = Files.createTempDirectory("demo");
        try {
            Resources.unpackDemo(unpacked);
            return pages(bench, unpacked, bench.placeWith(unpacked, DEMO));
        } finally {
            Bench.delete(unpacked);
        }
    }

    private List<Page> pages(Bench bench, Path unpacked, Path demo) throws IOException {
        var trees = new LinkedHashMap<String, JsonNode>();
        schemas.forEach((name, text) -> trees.put(name, Resources.json(text)));
        // examples know nothing of each other, each runs in a folder of its own: while some are told, others are run
        var leading = CompletableFuture.supplyAsync(() -> Chapters.leading(Story.teller(bench)));
        var howTo = CompletableFuture.supplyAsync(() -> Chapters.howTo(Story.teller(bench)));
        var findings =
                CompletableFuture.supplyAsync(() -> List.copyOf(Findings.all().values()).parallelStream()
                        .map(f -> FindingShown.of(f, bench))
                        .toList());
        var shown = CommandPages.of(commands, bench, demo);
        var pages = new ArrayList<>(done(leading));
        pages.addAll(2, List.of(WordPages.page()));
        pages.addAll(shown);
        pages.addAll(RecordPages.of(trees, ReadRecords.of(trees, unpacked)));
        pages.addAll(MetricPages.of(Catalogue.shipped()));
        pages.addAll(ConditionPages.of(Catalogue.shipped()));
        pages.add(UnitPage.page());
        pages.add(TextsPage.page());
        pages.addAll(FindingPages.of(done(findings)));
        pages.addAll(done(howTo));
        var whole = new ArrayList<Page>();
        whole.add(ContentsPages.contents(pages));
        whole.addAll(pages);
        whole.add(ContentsPages.index(pages));
        return whole;
    }

    /** What was worked on beside; what went wrong there is told as it is. */
    private static <T> T done(CompletableFuture<T> work) {
        try {
            return work.join();
        } catch (CompletionException e) {
            throw new IllegalStateException(
                    e.getCause() == null ? e.getMessage() : e.getCause().getMessage(), e);
        }
    }

    private static void write(Path file, byte[] content) throws IOException {
        Files.createDirectories(Objects.requireNonNull(file.getParent()));
        Files.write(file, content);
    }
}
