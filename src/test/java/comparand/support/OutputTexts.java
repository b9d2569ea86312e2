package comparand.support;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;

/** Every text a reader can see in the files of a build: cells, sentences, notes of speakers, letters, words of figures. */
public final class OutputTexts {

    private OutputTexts() {}

    /** By the name of the file; results and their schema are data and not among them, pictures hold no text to read. */
    public static Map<String, List<String>> of(Built built) {
        var texts = new TreeMap<String, List<String>>();
        try (var files = Files.walk(built.folder())) {
            files.filter(Files::isRegularFile).sorted().forEach(file -> {
                var read = texts(file);
                if (!read.isEmpty()) {
                    texts.put(built.folder().relativize(file).toString(), read);
                }
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return texts;
    }

    private static List<String> texts(Path file) {
        var name = file.toString();
        var ending = name.substring(name.lastIndexOf('.') + 1);
        return switch (ending) {
            case "xlsx" ->
                Stream.concat(
                                BookRows.tables(file).stream()
                                        .flatMap(r -> r.cells().stream())
                                        .map(BookRows.BookCell::shown),
                                BookRows.beside(file).stream())
                        .toList();
            case "pdf" -> pdf(TaggedPdf.of(file));
            case "pptx" ->
                SlidesRead.of(file).stream()
                        .flatMap(s -> Stream.concat(s.all().stream(), s.notes().stream()))
                        .toList();
            case "docx" -> TextDocument.of(file).texts();
            case "html" -> page(file);
            case "txt", "svg" -> lines(file);
            default -> List.of();
        };
    }

    private static List<String> pdf(TaggedPdf pdf) {
        return Stream.concat(
                        pdf.elements().stream().flatMap(TaggedPdf.Element::all).map(TaggedPdf.Element::text),
                        pdf.artifacts().stream())
                .toList();
    }

    /** What stands on a page, element by element, and the words its scripts speak with. */
    private static List<String> page(Path file) {
        try {
            var page = Jsoup.parse(file);
            var data =
                    new ObjectMapper().readTree(page.expectFirst("#exploration").data());
            return Stream.of(
                            page.getAllElements().stream().map(Element::ownText),
                            page.getAllElements().stream().map(e -> e.attr("aria-label")),
                            Built.all(data.get("words")).stream().map(JsonNode::asText))
                    .flatMap(s -> s)
                    .filter(s -> !s.isBlank())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
