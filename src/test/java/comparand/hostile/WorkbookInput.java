package comparand.hostile;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * A workbook. What is changed is its parts laid one behind another as text, each under a line with its name; so a change
 * reaches the XML, and no checksum of the archive gives it away. An input without such a line is taken as the file itself.
 */
final class WorkbookInput implements FuzzedReader {

    private static final String PART = "\n#part ";

    private final String name;
    private final List<byte[]> seeds;
    private final List<String> words;
    private final Path path;
    private final FileInput.Opening opening;

    WorkbookInput(String name, List<byte[]> books, Path path, FileInput.Opening opening) {
        this.name = name;
        this.seeds = new ArrayList<>(books.stream().map(WorkbookInput::parts).toList());
        this.words = Seeds.words(seeds);
        this.seeds.addAll(books);
        this.path = path;
        this.opening = opening;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public List<byte[]> seeds() {
        return List.copyOf(seeds);
    }

    @Override
    public List<String> words() {
        return words;
    }

    @Override
    public boolean isText() {
        return false;
    }

    @Override
    public Read read(byte[] input) throws IOException {
        var text = new String(input, StandardCharsets.ISO_8859_1);
        Files.write(path, text.contains(PART) ? archive(text) : input);
        return opening.read(path);
    }

    private static byte[] parts(byte[] book) {
        var out = new ByteArrayOutputStream();
        try (var zip = new ZipInputStream(new ByteArrayInputStream(book))) {
            for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                out.writeBytes((PART + entry.getName() + "\n").getBytes(StandardCharsets.UTF_8));
                out.writeBytes(zip.readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static byte[] archive(String text) throws IOException {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        for (var part : text.split(PART, -1)) {
            int end = part.indexOf('\n');
            if (end > 0) {
                parts.putIfAbsent(
                        part.substring(0, end), part.substring(end + 1).getBytes(StandardCharsets.ISO_8859_1));
            }
        }
        var out = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(out)) {
            zip.setMethod(ZipOutputStream.STORED);
            for (var part : parts.entrySet()) {
                var entry = new ZipEntry(part.getKey());
                var sum = new CRC32();
                sum.update(part.getValue());
                entry.setSize(part.getValue().length);
                entry.setCrc(sum.getValue());
                zip.putNextEntry(entry);
                zip.write(part.getValue());
            }
        } catch (IllegalArgumentException nameTooLong) {
            return new byte[0];
        }
        return out.toByteArray();
    }
}
