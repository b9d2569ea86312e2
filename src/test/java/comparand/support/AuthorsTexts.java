package comparand.support;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/**
 * What stands in documents and is not the tool's own: texts of the records of a library, names and headings in raw files,
 * references, ids, and findings.
 */
public final class AuthorsTexts {

    /** Shorter ones are no sentences, and would cut holes into words. */
    private static final int SHORTEST = 3;

    private static final List<String> IDS = List.of("id", "ours", "theirs", "file", "study", "code", "tool", "centre");

    private final List<Pattern> longestFirst;

    private AuthorsTexts(Collection<String> texts) {
        longestFirst = texts.stream()
                .map(AuthorsTexts::folded)
                .filter(t -> t.length() >= SHORTEST)
                .distinct()
                .sorted(Comparator.comparing(String::length).reversed())
                .map(AuthorsTexts::anywhere)
                .toList();
    }

    /** Also where a line was broken behind one of its signs. */
    private static Pattern anywhere(String text) {
        var broken = Stream.of(text.split("(?<=[/_.,;:~@-])", -1))
                .map(Pattern::quote)
                .collect(Collectors.joining("\\s?"));
        return Pattern.compile(
                "(?<![\\p{L}\\d])" + broken + "(?![\\p{L}\\d])", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** Of a library and the results of a build of it. */
    public static AuthorsTexts of(Path library, JsonNode results) {
        var texts = new TreeSet<String>();
        try (var files = Files.walk(library)) {
            files.filter(f -> f.toString().endsWith(".yaml")).forEach(f -> yaml(f, texts));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        results.get("findings")
                .forEach(f -> List.of("message", "why", "fix", "file")
                        .forEach(part -> texts.add(f.get(part).asText())));
        results.get("row-log")
                .get("files")
                .forEach(f ->
                        f.get("notes").forEach(n -> texts.add(n.get("reason").asText())));
        results.get("sources").forEach(s -> texts.add(s.get("reference").asText()));
        results.get("comparands")
                .forEach(c -> c.get("steps").forEach(s -> {
                    Optional.ofNullable(s.get("facts").get("columns")).ifPresent(x -> texts.add(x.asText()));
                    Optional.ofNullable(s.get("facts").get("from")).ifPresent(x -> texts.add(x.asText()));
                }));
        Stream.of("comparands", "set-aside")
                .flatMap(part -> StreamSupport.stream(results.get(part).spliterator(), false))
                .flatMap(c -> Optional.ofNullable(c.get("printed")).stream())
                .forEach(p -> texts.add(p.asText()));
        ids(results, texts);
        return new AuthorsTexts(texts);
    }

    private static void ids(JsonNode node, Collection<String> texts) {
        node.properties().forEach(e -> {
            if (IDS.contains(e.getKey()) && e.getValue().isTextual()) {
                texts.add(e.getValue().asText());
            }
            ids(e.getValue(), texts);
        });
        if (node.isArray()) {
            node.forEach(n -> ids(n, texts));
        }
    }

    private static void yaml(Path file, Collection<String> texts) {
        try {
            var settings =
                    LoadSettings.builder().setSchema(new FailsafeSchema()).build();
            collect(new Load(settings).loadFromString(Files.readString(file)), texts);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void collect(Object node, Collection<String> texts) {
        if (node instanceof Map<?, ?> map) {
            map.values().forEach(v -> collect(v, texts));
        } else if (node instanceof Collection<?> list) {
            list.forEach(v -> collect(v, texts));
        } else if (node instanceof String text && (text.contains(" ") || text.matches(".*[-_/].*"))) {
            texts.add(text);
        }
    }

    /** A text without what is not the tool's own in it. */
    public String without(String text) {
        var rest = folded(text);
        for (var authors : longestFirst) {
            rest = authors.matcher(rest).replaceAll(" \u2026 ");
        }
        return rest;
    }

    private static String folded(String text) {
        return text.replaceAll("[\\s\u00a0]+", " ").strip();
    }
}
