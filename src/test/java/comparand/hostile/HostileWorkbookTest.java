package comparand.hostile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import comparand.diag.Span;
import comparand.model.RowSource;
import comparand.model.UnreadableRows;
import comparand.read.workbook.FormReader;
import comparand.read.workbook.WorkbookPreview;
import comparand.read.workbook.WorkbookRows;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Workbooks made to do harm are refused in words, by every reader of workbooks, in bounded memory; and nothing is fetched. */
class HostileWorkbookTest {

    private static final String NOT_WHOLE = "not a whole workbook";
    private static final String DOCTYPE = "declares a type of document";

    /** In the heap of a small machine. */
    private static final long MOST = 400L << 20;

    @TempDir
    Path folder;

    private interface Made {
        Path in(Path folder) throws IOException;
    }

    private static String refusal(Path file) {
        try {
            rows(file).forEach(row -> row.cells().forEach(c -> c.text()));
            return "read";
        } catch (UnreadableRows e) {
            assertThat(e.fix()).isNotBlank();
            assertThat(e.place().file()).isEqualTo("register.xlsx");
            return e.problem();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static RowSource rows(Path file) throws IOException {
        return WorkbookRows.open(
                file, "register.xlsx", Optional.of("Cases"), new Span("study.yaml", 9, 12, 5), 1, new ArrayList<>());
    }

    private static Map<String, Made> refused() {
        var all = new LinkedHashMap<String, Made>();
        all.put("a sheet that declares a type of document: " + DOCTYPE, f -> doctype(f, HostileBooks.SHEET));
        all.put("texts that do: " + DOCTYPE, f -> doctype(f, HostileBooks.TEXTS));
        all.put("styles that do: " + NOT_WHOLE + "|" + DOCTYPE, f -> doctype(f, HostileBooks.STYLES));
        all.put("a list of parts that does: " + NOT_WHOLE + "|" + DOCTYPE, f -> doctype(f, "[Content_Types].xml"));
        all.put("relationships that do: " + NOT_WHOLE + "|" + DOCTYPE, f -> doctype(f, "xl/_rels/workbook.xml.rels"));
        all.put("properties that do, which nobody looks at: read", f -> doctype(f, "docProps/core.xml"));
        all.put("the list of sheets that does: " + DOCTYPE, f -> doctype(f, "xl/workbook.xml"));
        for (var name : new String[] {"../../x.xml", "/etc/x.xml", "C:/x.xml", "xl/../../x.xml", "..\\x"}) {
            all.put(
                    "a part named " + name + ": a place outside of it",
                    f -> new HostileBooks(f).with(name, "<x/>").written("x.xlsx"));
        }
        all.put(
                "a part named twice but for its letters: " + NOT_WHOLE,
                f -> new HostileBooks(f).with("XL/workbook.xml", "<x/>").written("x.xlsx"));
        all.put(
                "a cell in a column that no sheet has: " + NOT_WHOLE,
                f -> cells(f, "<row r=\"2\"><c r=\"ZZZZZZ2\"><v>1</v></c></row>"));
        all.put(
                "a row that no sheet has: " + NOT_WHOLE,
                f -> cells(f, "<row r=\"2147483647\"><c r=\"A2\"><v>1</v></c></row>"));
        all.put(
                "a cell in no row: " + NOT_WHOLE,
                f -> new HostileBooks(f)
                        .with(HostileBooks.SHEET, HostileBooks.sheet("<c r=\"A1\"><v>1</v></c>"))
                        .written("x.xlsx"));
        all.put(
                "a text of a number there is not: " + NOT_WHOLE,
                f -> cells(f, "<row r=\"2\"><c r=\"A2\" t=\"s\"><v>999999</v></c></row>"));
        all.put(
                "a text of a negative number: " + NOT_WHOLE,
                f -> cells(f, "<row r=\"2\"><c r=\"A2\" t=\"s\"><v>-1</v></c></row>"));
        all.put(
                "a cell longer than any: " + NOT_WHOLE,
                f -> cells(
                        f,
                        "<row r=\"2\"><c r=\"A2\" t=\"inlineStr\"><is><t>" + "x ".repeat(40_000)
                                + "</t></is></c></row>"));
        all.put(
                "a style of a number there is not: " + NOT_WHOLE,
                f -> cells(f, "<row r=\"2\"><c r=\"A2\" s=\"99999\"><v>1</v></c></row>"));
        all.put(
                "an attribute of megabytes: without|goes on",
                f -> new HostileBooks(f)
                        .with(
                                HostileBooks.SHEET,
                                HostileBooks.repeated(
                                        "<worksheet><sheetData><row r=\"",
                                        "1234567890abcdef",
                                        200_000,
                                        "\"/></sheetData></worksheet>"))
                        .written("x.xlsx", false));
        all.put(
                "styles of many megabytes: larger than 16 MB",
                f -> new HostileBooks(f)
                        .with(
                                HostileBooks.STYLES,
                                HostileBooks.repeated(
                                        "<styleSheet>", "<fonts><font/></fonts>", 900_000, "</styleSheet>"))
                        .written("x.xlsx", false));
        all.put(
                "texts of many megabytes: larger than 100 MB",
                f -> new HostileBooks(f)
                        .with(
                                HostileBooks.TEXTS,
                                HostileBooks.repeated(
                                        "<sst>",
                                        "<si><t>abcdefghijklmnopqrstuvwxyz0123456789</t></si>",
                                        2_200_000,
                                        "</sst>"))
                        .written("x.xlsx", false));
        all.put(
                "a part that unpacks into far more than its size: unpacks into far more",
                f -> new HostileBooks(f)
                        .with(
                                HostileBooks.SHEET,
                                HostileBooks.repeated(
                                        "<worksheet><sheetData>",
                                        "<row r=\"1\"/>",
                                        3_000_000,
                                        "</sheetData></worksheet>"))
                        .written("x.xlsx"));
        all.put(
                "sheets without number: " + NOT_WHOLE,
                f -> new HostileBooks(f)
                        .edited(
                                "xl/workbook.xml",
                                "</sheets>",
                                "<sheet name=\"x\" sheetId=\"9\" r:id=\"rId1\"/>".repeat(300) + "</sheets>")
                        .written("x.xlsx"));
        all.put(
                "a sheet that lies elsewhere: " + NOT_WHOLE,
                f -> new HostileBooks(f)
                        .edited(
                                "xl/_rels/workbook.xml.rels",
                                "Target=\"worksheets/sheet1.xml\"",
                                "Target=\"file:///etc/passwd\" TargetMode=\"External\"")
                        .written("x.xlsx"));
        all.put(
                "texts under the wrong type: " + NOT_WHOLE,
                f -> new HostileBooks(f)
                        .edited("[Content_Types].xml", "sharedStrings+xml", "worksheet+xml")
                        .written("x.xlsx"));
        all.put("parts that lie one over another: one over another", HostileWorkbookTest::overlapping);
        all.put("nothing: " + NOT_WHOLE, f -> Files.write(f.resolve("x.xlsx"), new byte[0]));
        return all;
    }

    private static Path cells(Path folder, String row) throws IOException {
        return new HostileBooks(folder)
                .with(HostileBooks.SHEET, HostileBooks.sheet(HostileBooks.rows(row)))
                .written("x.xlsx");
    }

    /** Ten entities each of ten of the one before, and one from a file: XML 1.0, 4.2. */
    private static Path doctype(Path folder, String part) throws IOException {
        var secret = Files.writeString(folder.resolve("secret.txt"), "SECRET");
        var entities = new StringBuilder("<!DOCTYPE x [<!ENTITY a0 SYSTEM \"" + secret.toUri() + "\">");
        for (int i = 1; i <= 9; i++) {
            entities.append("<!ENTITY a")
                    .append(i)
                    .append(" \"")
                    .append(("&a" + (i - 1) + ";").repeat(10))
                    .append("\">");
        }
        var books = new HostileBooks(folder);
        return books.with(part, "<?xml version=\"1.0\"?>" + entities + "]><x>&a9;</x>")
                .written("x.xlsx");
    }

    /** Every entry of the list of contents leads to the data of the largest. */
    private static Path overlapping(Path folder) throws IOException {
        var books = new HostileBooks(folder);
        var noise = new StringBuilder();
        var random = new java.util.SplittableRandom(1);
        for (int i = 0; i < 20_000; i++) {
            noise.append(Long.toHexString(random.nextLong()));
        }
        for (int i = 0; i < 5; i++) {
            books.with("xl/media/" + i + ".xml", "<x>" + noise + "</x>");
        }
        var file = books.written("x.xlsx");
        try (var bytes = new RandomAccessFile(file.toFile(), "rw")) {
            var all = new byte[(int) bytes.length()];
            bytes.readFully(all);
            var text = new String(all, StandardCharsets.ISO_8859_1);
            int last = -1;
            int first = -1;
            for (int at = text.indexOf("PK\u0001\u0002"); at >= 0; at = text.indexOf("PK\u0001\u0002", at + 4)) {
                if (text.startsWith("xl/media/", at + 46)) {
                    first = first < 0 ? at : first;
                    last = at;
                }
            }
            // as if each went on far into the next
            for (int at = first; at < last; at = text.indexOf("PK\u0001\u0002", at + 4)) {
                bytes.seek(at + 20L);
                bytes.write(new byte[] {(byte) 0x80, (byte) 0xA9, 3, 0});
            }
        }
        return file;
    }

    @TestFactory
    @DisplayName("what was made to do harm is refused")
    Stream<DynamicTest> harm() {
        return refused().entrySet().stream()
                .map(e -> dynamicTest(e.getKey(), () -> {
                    var words = e.getKey()
                            .substring(e.getKey().lastIndexOf(": ") + 2)
                            .split("\\|");
                    var file = e.getValue().in(Files.createTempDirectory(folder, "case"));

                    assertThat(refusal(file)).containsAnyOf(words).doesNotContain("SECRET");
                    assertThat(form(file)).isTrue();
                    assertThat(preview(file)).isTrue();
                    assertThat(memory()).isLessThan(MOST);
                }));
    }

    /** Whether the reader of forms came to an end: with findings, or with what can be read of it. */
    private static boolean form(Path file) {
        return FormReader.read(file).fold((form, said) -> true, said -> !said.isEmpty());
    }

    private static boolean preview(Path file) {
        try {
            return !WorkbookPreview.of(file).isEmpty();
        } catch (UnreadableRows e) {
            return !e.problem().isBlank();
        }
    }

    private static long memory() {
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    @Test
    @DisplayName("numbers as far from nought as a double can be are read, and none grows into a text of gigabytes")
    void numbers() throws IOException {
        var file = cells(
                folder,
                "<row r=\"2\"><c r=\"A2\"><v>1e-999999999</v></c><c r=\"B2\"><v>1.7976931348623157E308</v></c></row>");
        var seen = new ArrayList<String>();
        rows(file).forEach(row -> row.cells().forEach(c -> seen.add(c.text())));

        assertThat(seen).hasSize(2).first().isEqualTo("0");
        assertThat(seen.get(1)).hasSize(309);
    }

    @Test
    @DisplayName("a link to another workbook is not followed: what its cell last showed is read")
    void links() throws IOException {
        var file = new HostileBooks(folder)
                .with(
                        "xl/externalLinks/_rels/externalLink1.xml.rels",
                        "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"rId1\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/externalLinkPath\" Target=\"http://192.0.2.1/x.xlsx\" TargetMode=\"External\"/></Relationships>")
                .with(
                        HostileBooks.SHEET,
                        HostileBooks.sheet(
                                HostileBooks.rows(
                                        "<row r=\"2\"><c r=\"A2\" t=\"str\"><f>[1]Sheet1!A1</f><v>C-01</v></c><c r=\"B2\"><v>2</v></c></row>")))
                .written("x.xlsx");
        var seen = new ArrayList<String>();
        rows(file).forEach(row -> row.cells().forEach(c -> seen.add(c.text())));

        assertThat(seen).containsExactly("C-01", "2");
    }
}
