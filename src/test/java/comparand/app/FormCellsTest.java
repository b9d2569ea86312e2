package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.FilledForms;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What happens to cells on their way through spreadsheet programs and tired hands: common practice, as anybody who was ever sent a
 * filled table has met it. The form holds what the library says of an invented paper; one cell at a time is spoilt.
 */
final class FormCellsTest {

    private static final Path RECORD = Path.of("sources/ardley-2023.yaml");
    /** The row of B22 below the headings, counted from 0. */
    private static final int B22 = 1;

    @TempDir
    Path folder;

    private Path library;
    private Path form;

    @BeforeEach
    void aFormOfThePaper() throws IOException {
        library = LibraryCopy.of(Path.of("evidence"), folder.resolve("library"));
        form = folder.resolve("form.xlsx");
        var make = CommandLineUse.run(
                "intake", "make", library.toString(), "--source", "ardley-2023", "--out", form.toString());
        assertThat(make.code()).as(make.err()).isZero();
        FilledForms.fill(form, book -> FilledForms.start(book, "AB", "2026-11-20"));
    }

    @Test
    void aDecimalCommaIsReadAndSaid() throws IOException {
        var run = with("number", c -> c.setCellValue("51,9"));
        assertThat(run.out()).contains("\"51,9\" read as 51.9").contains("Nothing to write");
        assertThat(run.err()).contains("NOTE number-sign-mixed  form.xlsx, Values!");
    }

    @Test
    void aNumberStoredAsSuchIsTheSameNumber() throws IOException {
        assertThat(with("number", c -> c.setCellValue(51.9)).out()).contains("Nothing to write");
    }

    @Test
    void aNumberThatMayBeTwoIsRefused() throws IOException {
        stopped(with("number", c -> c.setCellValue("1,234")), "number-ambiguous", "`1,234` may be 1.234 or 1234");
    }

    @Test
    void aCellThatWasTurnedIntoADayIsRefused() throws IOException {
        stopped(
                with("spread", c -> {
                    var style = c.getSheet().getWorkbook().createCellStyle();
                    style.setDataFormat((short) 14);
                    c.setCellStyle(style);
                    c.setCellValue(46054);
                }),
                "cell-turned-into-date",
                "this cell holds the date 2026-02-01");
    }

    @Test
    void aUnitPastedWithItsNumberIsTakenApart() throws IOException {
        var run = with("number", c -> c.setCellValue("51.9 mmHg"));
        assertThat(run.out()).contains("\"51.9 mmHg\" read as 51.9 in mmHg").contains("Nothing to write");
    }

    @Test
    void aPastedUnitThatContradictsItsCellIsRefused() throws IOException {
        stopped(with("number", c -> c.setCellValue("51.9 kPa")), "unit-twice", "brings its own unit");
    }

    @Test
    void aFormulaIsRefused() throws IOException {
        stopped(with("number", c -> c.setCellFormula("50+1.9")), "cell-formula", "a formula stands in this cell");
    }

    @Test
    void aWordThatIsNotOnTheListIsRefused() throws IOException {
        stopped(
                with("kind of spread", c -> c.setCellValue("SDD")),
                "cell-not-in-list",
                "`SDD` is not one of the words");
        assertThat(with("kind of spread", c -> c.setCellValue("SD")).out()).contains("Nothing to write");
    }

    @Test
    void anEmptyCellIsNotNotReported() throws IOException {
        stopped(with("haemoglobin", c -> c.setBlank()), "unit-without-number", "a unit stands here");
        stopped(
                rows(sheet -> {
                    FilledForms.cell(sheet, B22, "haemoglobin").setBlank();
                    FilledForms.cell(sheet, B22, "haemoglobin, unit").setBlank();
                }),
                "condition-not-stated",
                "says nothing of: haemoglobin");
    }

    @Test
    void aNumberThatIsNotInTheQuoteIsPointedOutAtItsCell() throws IOException {
        var run = with("number", c -> c.setCellValue("52.9"));
        assertThat(run.code()).isZero();
        assertThat(run.err()).containsPattern("NOTE number-not-in-quote  form.xlsx, Values!");
    }

    @Test
    void aNameThatLeadsOutOfTheLibraryIsRefused() throws IOException {
        var copy = folder.resolve("form-out.xlsx");
        Files.copy(form, copy);
        FilledForms.fill(copy, book -> {
            var sheet = book.getSheet("Sources");
            FilledForms.cell(sheet, FilledForms.firstEmpty(sheet), "source").setCellValue("../../outside");
        });
        var run = CommandLineUse.run("intake", "take", copy.toString(), "--library", library.toString());
        assertThat(run.code()).isEqualTo(Exit.STOPPED);
        assertThat(run.err())
                .contains("STOP form-source-name  form-out.xlsx, Sources!")
                .contains("is not a plain name");
        assertThat(folder.resolve("outside.yaml")).doesNotExist();
    }

    @Test
    void aChangedCellChangesItsLineAndNoCommentIsLost() throws IOException {
        var before = Files.readString(library.resolve(RECORD))
                .replace(
                        "  - id: B22\n",
                        "  # seen in the printed correction, too\n  - id: B22   # the corrected one\n");
        Files.writeString(library.resolve(RECORD), before);
        var run = with("row", c -> c.setCellValue("7"));
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(Files.readString(library.resolve(RECORD)))
                .isEqualTo(before.replace("place: {page: 7, table: 2, row: 6}", "place: {page: 7, table: 2, row: 7}"));
    }

    private CommandLineUse.Run with(String heading, Consumer<XSSFCell> hand) throws IOException {
        return rows(sheet -> hand.accept(FilledForms.cell(sheet, B22, heading)));
    }

    private CommandLineUse.Run rows(Consumer<XSSFSheet> hand) throws IOException {
        var spoilt = folder.resolve("spoilt");
        Files.createDirectories(spoilt);
        var copy = spoilt.resolve("form.xlsx");
        Files.deleteIfExists(copy);
        Files.copy(form, copy);
        FilledForms.fill(copy, book -> hand.accept(book.getSheet("Values")));
        return CommandLineUse.run("intake", "take", copy.toString(), "--library", library.toString());
    }

    private void stopped(CommandLineUse.Run run, String code, String words) throws IOException {
        assertThat(run.code()).as(run.out()).isEqualTo(Exit.STOPPED);
        assertThat(run.err()).contains("STOP " + code + "  form.xlsx, Values!").contains(words);
        assertThat(Files.readString(library.resolve(RECORD)))
                .isEqualTo(Files.readString(Path.of("evidence").resolve(RECORD)));
    }
}
