package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.FilledForms;
import comparand.support.FolderContent;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Filled forms, damaged by seeded chance: what comes back are findings, and a library that is whole. */
final class MangledFormsTest {

    private static final int CELLS_DAMAGED = 70;
    private static final int FILES_DAMAGED = 30;

    @TempDir
    static Path folder;

    private static Path library;
    private static Path whole;

    @BeforeAll
    static void aFilledForm() throws IOException {
        library = LibraryCopy.of(Path.of("evidence"), folder.resolve("library"));
        whole = folder.resolve("whole.xlsx");
        var make = CommandLineUse.run(
                "intake",
                "make",
                library.toString(),
                "--source",
                "ardley-2023",
                "--source",
                "skarrow-ifu-2",
                "--out",
                whole.toString());
        assertThat(make.code()).as(make.err()).isZero();
        FilledForms.fill(whole, book -> FilledForms.start(book, "AB", "2026-11-20"));
    }

    static IntStream seeds() {
        return IntStream.range(0, CELLS_DAMAGED + FILES_DAMAGED);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aDamagedFormGivesFindingsAndNothingHalfWritten(int seed) throws IOException {
        var random = new Random(seed);
        var form = folder.resolve("form.xlsx");
        Files.copy(whole, form, StandardCopyOption.REPLACE_EXISTING);
        if (seed < CELLS_DAMAGED) {
            FilledForms.fill(form, book -> damageCells(book, random));
        } else {
            damageFile(form, random);
        }
        var before = FolderContent.of(library);

        var run = CommandLineUse.run("intake", "take", form.toString(), "--library", library.toString());

        assertThat(run.err()).doesNotContain("fault of the tool").doesNotContain("Exception");
        assertThat(run.code()).as(run.err()).isIn(Exit.DONE, Exit.STOPPED);
        if (run.code() == Exit.STOPPED) {
            assertThat(run.err()).contains("STOP");
            assertThat(FolderContent.of(library)).isEqualTo(before);
        } else {
            var check = CommandLineUse.run("check", library.toString());
            assertThat(check.out()).doesNotContain("STOP");
            // the next form finds the library as this one found it
            for (var id : new String[] {"ardley-2023", "skarrow-ifu-2"}) {
                var file = Path.of("sources", id + ".yaml");
                Files.copy(
                        Path.of("evidence").resolve(file), library.resolve(file), StandardCopyOption.REPLACE_EXISTING);
            }
            removeNew();
        }
    }

    /** A row whose source or id was changed may have made a source of its own. */
    private static void removeNew() throws IOException {
        try (var files = Files.list(library.resolve("sources"))) {
            for (var file : files.toList()) {
                if (!Files.exists(
                        Path.of("evidence/sources").resolve(file.getFileName().toString()))) {
                    Files.delete(file);
                }
            }
        }
    }

    private static void damageCells(XSSFWorkbook book, Random random) {
        String[] sheets = {"Sources", "Values", "Figure points", "Start"};
        int n = 1 + random.nextInt(4);
        for (int i = 0; i < n; i++) {
            var sheet = book.getSheet(sheets[random.nextInt(sheets.length)]);
            if (sheet == null) {
                continue;
            }
            switch (random.nextInt(12)) {
                case 0 -> book.removeSheetAt(book.getSheetIndex(sheet));
                case 1 -> damageHeading(sheet, random);
                case 2 -> {
                    var row = sheet.getRow(random.nextInt(6));
                    if (row != null) {
                        sheet.removeRow(row);
                    }
                }
                case 3 -> sheet.shiftRows(4, sheet.getLastRowNum(), 1 + random.nextInt(3));
                default -> damageCell(book, sheet, random);
            }
        }
    }

    private static void damageHeading(XSSFSheet sheet, Random random) {
        var row = sheet.getRow(3);
        if (row != null && row.getLastCellNum() > 0) {
            var cell = row.getCell(random.nextInt(row.getLastCellNum()));
            if (cell != null) {
                cell.setCellValue(random.nextBoolean() ? "" : "unit");
            }
        }
    }

    private static void damageCell(XSSFWorkbook book, XSSFSheet sheet, Random random) {
        var row = sheet.getRow(4 + random.nextInt(6));
        if (row == null || row.getLastCellNum() <= 0) {
            return;
        }
        var cell = row.getCell(random.nextInt(row.getLastCellNum()));
        if (cell == null) {
            return;
        }
        switch (random.nextInt(10)) {
            case 0 -> cell.setCellValue("");
            case 1 -> cell.setCellValue(random.nextDouble() * 1e6 - 5e5);
            case 2 -> {
                cell.setCellValue(46000.0 + random.nextInt(500));
                var style = book.createCellStyle();
                style.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd"));
                cell.setCellStyle(style);
            }
            case 3 -> cell.setCellFormula("1/0");
            case 4 -> cell.setCellValue(random.nextBoolean());
            case 5 -> cell.setCellErrorValue((byte) 42);
            case 6 -> cell.setCellValue("1.234,5 kPa");
            case 7 -> cell.setCellValue("\u0000\uFEFF\u2028 : # {[\"'".substring(random.nextInt(5)));
            case 8 -> cell.setCellValue("../../x");
            default -> cell.setCellValue("9,3 ± ".repeat(1 + random.nextInt(60)));
        }
    }

    /** Cuts the file, or changes some of its bytes. */
    private static void damageFile(Path form, Random random) throws IOException {
        var bytes = Files.readAllBytes(form);
        if (random.nextInt(3) == 0) {
            Files.write(form, Arrays.copyOf(bytes, random.nextInt(bytes.length)));
            return;
        }
        for (int i = 0; i < 1 + random.nextInt(20); i++) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        Files.write(form, bytes);
    }
}
