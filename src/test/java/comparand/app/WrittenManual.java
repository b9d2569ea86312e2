package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.parser.Parser;

/** The manual, written once for all tests and read back as a browser reads it. */
final class WrittenManual {

    private static final WrittenManual ONCE = new WrittenManual();

    private final Path folder;
    private final Map<String, Document> pages = new TreeMap<>();
    private final List<String> faults = new ArrayList<>();

    private WrittenManual() {
        try {
            folder = Path.of("target", "manual-of-the-tests");
            var run = CommandLineUse.run("manual", "--out", folder.toString());
            assertThat(run.code()).as(run.err()).isZero();
            assertThat(run.out()).contains(folder.resolve("index.html").toString());
            try (var files = Files.walk(folder)) {
                for (var file :
                        files.filter(f -> f.toString().endsWith(".html")).toList()) {
                    read(file);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void read(Path file) throws IOException {
        var name = folder.relativize(file).toString().replace('\\', '/');
        var parser = Parser.htmlParser().setTrackErrors(20);
        pages.put(name, Jsoup.parse(Files.readString(file), name, parser));
        parser.getErrors().forEach(e -> faults.add(name + ": " + e));
    }

    static Path folder() {
        return ONCE.folder;
    }

    /** Every page by its name within the manual. */
    static Map<String, Document> pages() {
        return Collections.unmodifiableMap(ONCE.pages);
    }

    /** What is no HTML in them. */
    static List<String> faults() {
        return List.copyOf(ONCE.faults);
    }

    static Document page(String name) {
        var page = ONCE.pages.get(name);
        assertThat(page).as(name).isNotNull();
        return Objects.requireNonNull(page);
    }
}
