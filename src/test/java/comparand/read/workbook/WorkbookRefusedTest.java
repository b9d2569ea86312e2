package comparand.read.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import comparand.diag.Span;
import comparand.model.UnreadableRows;
import comparand.support.Books;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.util.CellRangeAddress;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** What cannot be read as a table without guessing is refused, at its cell. */
class WorkbookRefusedTest {

    @TempDir
    Path folder;

    private UnreadableRows refused(Path file, Optional<String> sheet) {
        return catchThrowableOfType(
                UnreadableRows.class,
                () -> WorkbookRows.open(
                                file, "register.xlsx", sheet, new Span("study.yaml", 9, 12, 5), 1, new ArrayList<>())
                        .forEach(row -> {}));
    }

    private Path small(String name) throws IOException {
        return Books.write(folder.resolve(name), book -> {
            var sheet = book.createSheet("Cases");
            Books.set(sheet.createRow(0), 0, "case", "flow");
            Books.set(sheet.createRow(1), 0, "C-01", 1.5);
            book.createSheet("Labs");
        });
    }

    @TestFactory
    Stream<DynamicTest> tablesThatAreNone() {
        Map<String, Books.Filling> fillings = Map.of(
                "Cases!A1: merged",
                        book -> {
                            var sheet = book.createSheet("Cases");
                            Books.set(sheet.createRow(0), 0, "case", "", "flow");
                            Books.set(sheet.createRow(1), 0, "C-01", 1, 2);
                            sheet.addMergedRegion(CellRangeAddress.valueOf("A1:B1"));
                        },
                "Cases!A2: merged",
                        book -> {
                            var sheet = book.createSheet("Cases");
                            Books.set(sheet.createRow(0), 0, "case", "flow");
                            Books.set(sheet.createRow(1), 0, "C-01", 1);
                            Books.set(sheet.createRow(2), 0, "", 2);
                            sheet.addMergedRegion(CellRangeAddress.valueOf("A2:A3"));
                        },
                "Cases!B2: does not hold",
                        book -> {
                            var sheet = book.createSheet("Cases");
                            Books.set(sheet.createRow(0), 0, "case", "flow");
                            Books.set(sheet.createRow(1), 0, "C-01");
                            sheet.getRow(1).createCell(1).setCellFormula("1+1");
                        },
                "Cases!B1: two columns",
                        book -> {
                            var sheet = book.createSheet("Cases");
                            Books.set(sheet.createRow(0), 0, "flow", "flow");
                        },
                "Cases!A2: left of the first heading",
                        book -> {
                            var sheet = book.createSheet("Cases");
                            Books.set(sheet.createRow(0), 1, "case", "flow");
                            Books.set(sheet.createRow(1), 0, "C-01");
                        },
                "Cases!A1: no headings", book -> book.createSheet("Cases"));
        return fillings.entrySet().stream()
                .map(e -> dynamicTest(e.getKey(), () -> {
                    var file = Books.write(Files.createTempFile(folder, "table", ".xlsx"), e.getValue());
                    var found = refused(file, Optional.of("Cases"));
                    var cell = e.getKey().substring(0, e.getKey().indexOf(':'));
                    assertThat(found.place()).hasToString("register.xlsx, " + cell);
                    assertThat(found.problem()).contains(e.getKey().substring(cell.length() + 2));
                }));
    }

    @Test
    void theSheetIsDeclaredAndThere() throws IOException {
        var file = small("register.xlsx");

        assertThat(refused(file, Optional.empty())).satisfies(e -> {
            assertThat(e.place()).hasToString("study.yaml:9:12");
            assertThat(e.fix()).contains("Cases | Labs");
        });
        assertThat(refused(file, Optional.of("Case")).fix()).contains("`Cases`");
    }

    @Test
    void whatIsNoWorkbookIsRefused() throws IOException {
        var text = Files.writeString(folder.resolve("text.xlsx"), "case;flow\n");
        var whole = Files.readAllBytes(small("whole.xlsx"));
        var cut = Files.write(folder.resolve("cut.xlsx"), Arrays.copyOf(whole, whole.length / 2));
        var older = Files.write(
                folder.resolve("older.xlsx"), new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0, 0, 0, 0});

        assertThat(refused(text, Optional.of("Cases")).problem()).contains("not a whole workbook");
        assertThat(refused(cut, Optional.of("Cases")).problem()).contains("not a whole workbook");
        assertThat(refused(older, Optional.of("Cases")).problem()).contains("password", ".xls");
    }

    @Test
    void brokenXmlAndPartsThatUnpackIntoTooMuchAreRefused() throws IOException {
        var broken = withSheet("broken.xlsx", "<worksheet><sheetData><row r=\"1\"><c r=\"A1\"><v>1</v>");
        var noNumber = withSheet("no-number.xlsx", sheet("<row r=\"1\"><c r=\"A1\"><v>one</v></c></row>"));
        var bomb = withSheet("bomb.xlsx", sheet("<row r=\"1\">" + " ".repeat(20_000_000) + "</row>"));

        assertThat(refused(broken, Optional.of("Cases")).problem()).contains("not a whole workbook");
        assertThat(refused(noNumber, Optional.of("Cases")).problem()).contains("not a whole workbook");
        assertThat(refused(bomb, Optional.of("Cases")).problem()).contains("unpacks into far more");
    }

    private static String sheet(String rows) {
        return "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>" + rows
                + "</sheetData></worksheet>";
    }

    /** A workbook whose first sheet is another text. */
    private Path withSheet(String name, String xml) throws IOException {
        var file = folder.resolve(name);
        try (var from = new ZipFile(small("from.xlsx").toFile());
                var to = new ZipOutputStream(Files.newOutputStream(file))) {
            for (var entry : Collections.list(from.entries())) {
                to.putNextEntry(new ZipEntry(entry.getName()));
                to.write(
                        entry.getName().equals("xl/worksheets/sheet1.xml")
                                ? xml.getBytes(StandardCharsets.UTF_8)
                                : from.getInputStream(entry).readAllBytes());
            }
        }
        return file;
    }
}
