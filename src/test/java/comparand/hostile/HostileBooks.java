package comparand.hostile;

import static java.util.Objects.requireNonNull;

import comparand.support.Books;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** A small workbook whose parts can be replaced by others, however large. */
final class HostileBooks {

    static final String SHEET = "xl/worksheets/sheet1.xml";
    static final String TEXTS = "xl/sharedStrings.xml";
    static final String STYLES = "xl/styles.xml";

    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    private final Path folder;
    private final Map<String, Part> parts = new LinkedHashMap<>();

    /** What is written into a part, piece by piece. */
    interface Part {
        void write(ZipOutputStream out) throws IOException;
    }

    HostileBooks(Path folder) throws IOException {
        this.folder = folder;
        var whole = Books.write(folder.resolve("whole.xlsx"), book -> {
            var sheet = book.createSheet("Cases");
            Books.set(sheet.createRow(0), 0, "case", "flow");
            Books.set(sheet.createRow(1), 0, "C-01", 1.5);
        });
        try (var from = new ZipFile(whole.toFile())) {
            for (var entry : Collections.list(from.entries())) {
                var bytes = from.getInputStream(entry).readAllBytes();
                parts.put(entry.getName(), out -> out.write(bytes));
            }
        }
    }

    HostileBooks with(String part, String text) {
        return with(part, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    HostileBooks with(String part, Part content) {
        parts.put(part, content);
        return this;
    }

    /** A part as it is, with a text in it replaced. */
    HostileBooks edited(String part, String old, String by) throws IOException {
        var bytes = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry("x"));
            requireNonNull(parts.get(part), part).write(zip);
        }
        try (var zip = new ZipInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            zip.getNextEntry();
            var text = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
            if (!text.contains(old)) {
                throw new IllegalArgumentException(part + " does not contain " + old);
            }
            return with(part, text.replace(old, by));
        }
    }

    static String sheet(String rows) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?><worksheet xmlns=\"" + MAIN + "\"><sheetData>" + rows
                + "</sheetData></worksheet>";
    }

    /** A row of headings and one below. */
    static String rows(String below) {
        return "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>case</t></is></c><c r=\"B1\" t=\"inlineStr\"><is><t>flow</t></is></c></row>"
                + below;
    }

    /** Something, over and over, with random bytes between so that it does not unpack into a hundred times its size. */
    static Part repeated(String before, String once, long times, String after) {
        return out -> {
            out.write(before.getBytes(StandardCharsets.UTF_8));
            var bytes = once.repeat(1000).getBytes(StandardCharsets.UTF_8);
            for (long i = 0; i < times; i += 1000) {
                out.write(bytes);
            }
            out.write(after.getBytes(StandardCharsets.UTF_8));
        };
    }

    Path written(String name) throws IOException {
        return written(name, true);
    }

    /** Parts that are not packed are no bomb by their ratio. */
    Path written(String name, boolean packed) throws IOException {
        var file = folder.resolve(name);
        try (var to = new ZipOutputStream(Files.newOutputStream(file))) {
            to.setLevel(packed ? 6 : 0);
            for (var part : parts.entrySet()) {
                to.putNextEntry(new ZipEntry(part.getKey()));
                part.getValue().write(to);
            }
        }
        return file;
    }
}
