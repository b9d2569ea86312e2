package comparand.support;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;

/** Damages one file of a library copy as a specification says; each key of an edit is one way to do it. */
public final class Mangling {

    private final Path library;
    private final Path file;
    private final JsonNode edit;

    private Mangling(Path library, JsonNode edit) {
        this.library = library;
        this.file = library.resolve(edit.get("in").asText());
        this.edit = edit;
    }

    /** Applies the edits of a case in their order. */
    public static void apply(JsonNode edits, Path library) throws IOException {
        if (edits.isEmpty()) {
            throw new IllegalArgumentException("a case damages something");
        }
        for (var edit : edits) {
            new Mangling(library, edit).apply();
        }
    }

    private void apply() throws IOException {
        if (edit.has("replace")) {
            replace();
        } else if (edit.has("write")) {
            Files.writeString(file, edit.get("write").asText());
        } else if (edit.has("hex")) {
            Files.write(file, bytes("hex"));
        } else if (edit.has("append")) {
            Files.write(file, joined(Files.readAllBytes(file), inserted("append")));
        } else if (edit.has("prepend")) {
            Files.write(file, joined(utf8("prepend"), Files.readAllBytes(file)));
        } else if (edit.has("prepend-hex")) {
            Files.write(file, joined(bytes("prepend-hex"), Files.readAllBytes(file)));
        } else if (edit.has("cut-behind")) {
            int end = place(utf8("cut-behind")) + utf8("cut-behind").length;
            first(end - edit.path("less").asInt(0));
        } else if (edit.has("first-bytes")) {
            first(edit.get("first-bytes").asInt());
        } else if (edit.has("recode")) {
            Files.write(
                    file,
                    Files.readString(file)
                            .getBytes(Charset.forName(edit.get("recode").asText())));
        } else if (edit.has("line-ends")) {
            Files.writeString(
                    file,
                    Files.readString(file).replace("\n", edit.get("line-ends").asText()));
        } else {
            applyToFolder();
        }
    }

    private void applyToFolder() throws IOException {
        if (edit.has("delete")) {
            Files.delete(file);
        } else if (edit.has("folder")) {
            Files.delete(file);
            Files.createDirectory(file);
        } else if (edit.has("rename")) {
            Files.move(file, file.resolveSibling(edit.get("rename").asText()).normalize());
        } else if (edit.has("copy")) {
            Files.copy(file, file.resolveSibling(edit.get("copy").asText()));
        } else if (edit.has("move-outside")) {
            var outside = library.resolveSibling("outside-" + file.getFileName());
            Files.move(file, outside);
            Files.createSymbolicLink(file, outside);
            if (edit.get("move-outside").asText().equals("link to nothing")) {
                Files.delete(outside);
            }
        } else {
            throw new IllegalArgumentException("no way of damage known in " + edit);
        }
    }

    /** Replaces every occurrence of a text, which must occur. */
    private void replace() throws IOException {
        var old = utf8("replace");
        place(old);
        var by = edit.has("by-hex") ? bytes("by-hex") : inserted("by");
        // one byte per character keeps bytes that are no text
        var text = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
        var changed =
                text.replace(new String(old, StandardCharsets.ISO_8859_1), new String(by, StandardCharsets.ISO_8859_1));
        Files.write(file, changed.getBytes(StandardCharsets.ISO_8859_1));
    }

    /** The text under a key, then what {@code repeat} and {@code times} say, then the text under {@code then}. */
    private byte[] inserted(String key) {
        var text = edit.get(key).asText()
                + edit.path("repeat").asText("").repeat(edit.path("times").asInt(0))
                + edit.path("then").asText("");
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private int place(byte[] wanted) throws IOException {
        var text = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
        int at = text.indexOf(new String(wanted, StandardCharsets.ISO_8859_1));
        if (at < 0) {
            throw new IllegalArgumentException(file + " does not contain what " + edit + " looks for");
        }
        return at;
    }

    private void first(int count) throws IOException {
        var all = Files.readAllBytes(file);
        if (count >= all.length) {
            throw new IllegalArgumentException(edit + " cuts nothing off");
        }
        Files.write(file, Arrays.copyOf(all, count));
    }

    private byte[] utf8(String key) {
        return edit.get(key).asText().getBytes(StandardCharsets.UTF_8);
    }

    private byte[] bytes(String key) {
        return HexFormat.of().parseHex(edit.get(key).asText());
    }

    private static byte[] joined(byte[] first, byte[] second) {
        var out = new ByteArrayOutputStream();
        out.writeBytes(first);
        out.writeBytes(second);
        return out.toByteArray();
    }
}
