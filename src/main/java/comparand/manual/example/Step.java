package comparand.manual.example;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;

/**
 * One change of a file on the way to an example. {@code in} names a file of the library, {@code at} one beside it; what is done
 * to it is one of {@code replace} with {@code by}, {@code write}, {@code append}, {@code copy}, {@code rename}, {@code delete},
 * {@code folder}, {@code link}, {@code encode} and {@code cut-before}.
 */
final class Step {

    private final JsonNode step;
    private final Path base;
    private final Path file;

    Step(JsonNode step, Path place) {
        this.step = step;
        this.base = step.has("in") ? place.resolve(Bench.LIBRARY) : place;
        this.file = base.resolve(text(step.has("in") ? "in" : "at"));
    }

    /** Where it changes something, for a reader: a file of the library by its name there. */
    static String where(JsonNode step) {
        return step.path(step.has("in") ? "in" : "at").asText();
    }

    void apply() throws IOException {
        if (step.has("replace")) {
            replace();
        } else if (step.has("write")) {
            Bench.write(file, text("write"));
        } else if (step.has("append")) {
            var before = Files.exists(file) ? Files.readString(file) : "";
            Bench.write(file, before + text("append") + repeated());
        } else if (step.has("encode")) {
            Files.write(file, Files.readString(file).getBytes(Charset.forName(text("encode"))));
        } else if (step.has("cut-before")) {
            var whole = Files.readString(file);
            Bench.write(file, whole.substring(0, at(whole, text("cut-before"))));
        } else {
            place();
        }
    }

    private void place() throws IOException {
        if (step.has("copy")) {
            Files.createDirectories(Objects.requireNonNull(file.getParent()));
            Files.copy(base.resolve(text("copy")), file);
        } else if (step.has("rename")) {
            Files.move(file, file.resolveSibling(text("rename")));
        } else if (step.has("delete")) {
            Files.delete(file);
        } else if (step.has("folder")) {
            Files.createDirectories(file);
        } else if (step.has("link")) {
            Files.createSymbolicLink(file, base.resolve(text("link")));
        } else {
            throw new IllegalArgumentException("no change known in " + step);
        }
    }

    private void replace() throws IOException {
        var whole = Files.readString(file, StandardCharsets.UTF_8);
        at(whole, text("replace"));
        Bench.write(file, whole.replace(text("replace"), text("by") + repeated()));
    }

    private String repeated() {
        return step.path("repeat").asText("").repeat(step.path("times").asInt(0));
    }

    private int at(String whole, String wanted) {
        int at = whole.indexOf(wanted);
        if (at < 0) {
            throw new IllegalArgumentException(file.getFileName() + " does not contain what " + step + " looks for");
        }
        return at;
    }

    private String text(String key) {
        return step.path(key).asText();
    }
}
