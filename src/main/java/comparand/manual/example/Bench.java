package comparand.manual.example;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.manual.example.Tool.Run;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;

/** A folder in which examples are set up and run, each in a folder of its own; it is gone when the work is done. */
public final class Bench implements AutoCloseable {

    /** The library of an example, as {@code comparand start} writes it, within the folder of the example. */
    static final String LIBRARY = "library";

    private final Tool tool;
    private final Path root;
    private final Path blank;
    private final Map<List<JsonNode>, Path> begins = new HashMap<>();
    private final AtomicInteger used = new AtomicInteger();

    /** Sets up an empty folder, and a new library in it to copy from. */
    public Bench(Tool tool) throws IOException {
        this.tool = tool;
        this.root = Files.createTempDirectory("manual").toRealPath();
        this.blank = root.resolve("blank");
        var start = tool.run(root, List.of("start", "blank"), "");
        if (start.code() != 0) {
            throw new IllegalStateException("no library to take examples from: " + start.err());
        }
    }

    /** A folder of its own with a new library in it. */
    Path place() throws IOException {
        var place = root.resolve(Integer.toString(used.incrementAndGet()));
        copy(blank, place.resolve(LIBRARY));
        return place;
    }

    /** The same after some steps, which are carried out once for all that begin with them. */
    Path place(List<JsonNode> given) throws IOException {
        if (given.isEmpty()) {
            return place();
        }
        Path begun;
        synchronized (begins) {
            var there = begins.get(given);
            begun = there == null ? place() : there;
            if (there == null) {
                carryOut(given, begun);
                begins.put(given, begun);
            }
        }
        var place = root.resolve(Integer.toString(used.incrementAndGet()));
        copy(begun, place);
        return place;
    }

    /** Carries out steps in their order; changes of one workbook that follow each other are made at once. */
    void carryOut(List<JsonNode> steps, Path place) throws IOException {
        for (int at = 0; at < steps.size(); at++) {
            var step = steps.get(at);
            if (step.has("run")) {
                run(place, step.path("run").asText());
            } else if (step.has("book")) {
                int end = at;
                while (end < steps.size() && steps.get(end).path("book").equals(step.path("book"))) {
                    end++;
                }
                BookStep.apply(steps.subList(at, end), place);
                at = end - 1;
            } else {
                new Step(step, place).apply();
            }
        }
    }

    /** A folder of its own that holds a copy of another. */
    public Path placeWith(Path content, String name) throws IOException {
        var place = root.resolve(Integer.toString(used.incrementAndGet()));
        copy(content, place.resolve(name));
        return place;
    }

    /** Runs a line as a person would type it, without {@code comparand}; where the folder lies is taken out of the answer. */
    public Run run(Path place, String line) {
        return run(place, line, "");
    }

    /** The same while something is typed. */
    public Run run(Path place, String line, String typed) {
        var run = tool.run(place, Arrays.asList(line.split(" +", -1)), typed);
        return new Run(run.code(), shown(run.out(), place), shown(run.err(), place));
    }

    private static String shown(String text, Path place) {
        return text.replace(place + "/", "").replace(place + "\\", "").replace("\r\n", "\n");
    }

    private static void copy(Path from, Path to) throws IOException {
        try (var files = Files.walk(from)) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                var target = to.resolve(from.relativize(file).toString());
                // editors read schemas, the tool does not
                if (!file.getFileName().toString().endsWith(".schema.json")) {
                    Files.createDirectories(Objects.requireNonNull(target.getParent()));
                    Files.copy(file, target);
                }
            }
        }
    }

    static void write(Path file, String text) throws IOException {
        Files.createDirectories(Objects.requireNonNull(file.getParent()));
        Files.write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public void close() throws IOException {
        delete(root);
    }

    /** Deletes a folder and all in it. */
    public static void delete(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                    Files.delete(file);
                }
            }
        }
    }
}
