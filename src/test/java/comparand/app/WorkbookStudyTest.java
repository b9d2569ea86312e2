package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.json.JsonMapper;
import comparand.support.Books;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A study whose raw data lie in a workbook. */
class WorkbookStudyTest {

    private static final Path BLANK = Path.of("templates/blank");
    private static final String STUDY = "studies/example-bench/study.yaml";

    @TempDir
    Path folder;

    /** The blank library with its runs in a workbook, numbers as numbers. */
    private Path library(Books.Filling change) throws IOException {
        var library = LibraryCopy.of(BLANK, folder.resolve("library"));
        var csv = library.resolve("studies/example-bench/runs.csv");
        var rows = Files.readAllLines(csv);
        Books.write(library.resolve("studies/example-bench/runs.xlsx"), book -> {
            var sheet = book.createSheet("Runs");
            for (int r = 0; r < rows.size(); r++) {
                var cells = List.of(rows.get(r).split(",", -1));
                for (int c = 0; c < cells.size(); c++) {
                    boolean number = cells.get(c).matches("\\d+(\\.\\d+)?");
                    Books.set(
                            c == 0 ? sheet.createRow(r) : sheet.getRow(r),
                            c,
                            number ? Double.valueOf(cells.get(c)) : cells.get(c));
                }
            }
            change.fill(book);
        });
        Files.delete(csv);
        LibraryCopy.edit(library.resolve(STUDY), "file: runs.csv", "file: runs.xlsx\n    sheet: Runs");
        LibraryCopy.edit(
                library.resolve(STUDY), "    separator: comma                 # comma | semicolon | tab\n", "");
        LibraryCopy.edit(library.resolve(STUDY), "    encoding: UTF-8\n", "");
        LibraryCopy.edit(library.resolve(STUDY), "    decimal: point                   # point | comma\n", "");
        return library;
    }

    private static List<String> results(Path library) {
        return LocalEvidence.of(library.resolve("dossiers/example.yaml")).stream()
                .map(c -> c.device() + " " + c.metric().id() + " " + c.summary() + " " + c.sizes())
                .toList();
    }

    @Test
    void theResultsAreThoseOfTheSameRowsAsText() throws IOException {
        assertThat(results(library(book -> {}))).isNotEmpty().isEqualTo(results(BLANK));
    }

    @Test
    void findingsNameSheetAndCell() throws IOException {
        var library = library(WorkbookStudyTest::failedFormula);

        var text = CommandLineUse.run("check", library.toString());
        var json = CommandLineUse.run("check", library.toString(), "--findings", "json");

        assertThat(text.code()).isEqualTo(Exit.STOPPED);
        assertThat(text.out())
                .contains(
                        "STOP cell-error  studies/example-bench/runs.xlsx, Runs!D3",
                        "`#N/A` stands where a formula failed");
        var finding = JsonMapper.builder().build().readTree(json.out()).at("/findings/0");
        assertThat(finding.get("file").asText()).isEqualTo("studies/example-bench/runs.xlsx");
        assertThat(finding.get("sheet").asText()).isEqualTo("Runs");
        assertThat(finding.get("cell").asText()).isEqualTo("D3");
        assertThat(finding.get("line").asInt()).isEqualTo(3);
        assertThat(finding.get("column").asInt()).isEqualTo(4);
    }

    @Test
    void anErrorThatIsDeclaredMissingIsMissing() throws IOException {
        var library = library(WorkbookStudyTest::failedFormula);
        LibraryCopy.edit(library.resolve(STUDY), "missing: [\"n.d.\"]", "missing: [\"n.d.\", \"#N/A\"]");

        var check = CommandLineUse.run("check", library.toString());

        assertThat(check.code()).as(check.out()).isZero();
        assertThat(check.out()).contains("rows-without-value", "1 of 8 rows");
    }

    @Test
    void keysOfTextFilesAreRefused() throws IOException {
        var library = library(book -> {});
        LibraryCopy.edit(library.resolve(STUDY), "    sheet: Runs\n", "    sheet: Runs\n    separator: comma\n");

        assertThat(CommandLineUse.run("check", library.toString()).out())
                .contains("STOP key-not-for-this-file  " + STUDY + ":11:16");
    }

    @Test
    void twoSheetsOfOneWorkbookAreTwoSources() throws IOException {
        var library = library(book -> {
            Books.set(
                    book.createSheet("Late").createRow(0), 0, "unit", "device", "flow", "p_in", "p_out", "hb", "note");
            Books.set(book.getSheet("Late").createRow(1), 0, "E-9", "E", 4.0, 260, 199, 120, "late");
        });
        var study = library.resolve(STUDY);
        var text = Files.readString(study);
        var entry = text.substring(text.indexOf("  - file:"), text.indexOf("    dropped:"));
        Files.writeString(study, text + entry.replace("sheet: Runs", "sheet: Late"));

        var check = CommandLineUse.run("check", library.toString());

        assertThat(check.code()).as(check.out()).isZero();
    }

    private static void failedFormula(XSSFWorkbook book) {
        var cell = book.getSheet("Runs").getRow(2).getCell(3);
        cell.setBlank();
        cell.setCellErrorValue((byte) 0x2A);
        assertThat(cell.getCellType()).isEqualTo(CellType.ERROR);
    }
}
