package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.FilledForms;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A second person reads an invented paper, takes the wrong row once, and both settle it. */
final class SecondReaderTest {

    private static final Path RECORD = Path.of("sources/bonvale-2022.yaml");

    private static final Map<String, String> B25 = new TreeMap<>(Map.ofEntries(
            Map.entry("as printed", "90.4 (SD 3.3) %"),
            Map.entry("kind of figure", "mean"),
            Map.entry("number", "90.4"),
            Map.entry("unit", "%"),
            Map.entry("kind of spread", "sd"),
            Map.entry("spread", "3.3"),
            Map.entry("spread, unit", "percentage points"),
            Map.entry("n", "8"),
            Map.entry("n of what", "units"),
            Map.entry("definition: parts", "filter, oxygenator, exchanger"),
            Map.entry("definition: aggregation", "per-run-then-mean"),
            Map.entry("blood flow", "1"),
            Map.entry("blood flow, unit", "L/min"),
            Map.entry("air challenge", "5 mL bolus"),
            Map.entry("test model", "bench-blood-animal"),
            Map.entry("blood species", "bovine"),
            Map.entry("blood temperature", "37"),
            Map.entry("blood temperature, unit", "°C"),
            Map.entry("smallest bubble counted", "20"),
            Map.entry("smallest bubble counted, unit", "µm"),
            Map.entry("bubble detector", "ultrasound-pulse-echo"),
            Map.entry("page", "5"),
            Map.entry("table", "2"),
            Map.entry("row", "1"),
            Map.entry("quote", "Quillane 15 | 5 mL bolus | volume reduction 90.4 (SD 3.3) %")));

    private static final Map<String, String> B26 = new TreeMap<>(Map.ofEntries(
            Map.entry("as printed", "62 %"),
            Map.entry("kind of figure", "mean"),
            Map.entry("number", "62"),
            Map.entry("unit", "%"),
            Map.entry("n", "8"),
            Map.entry("n of what", "units"),
            Map.entry("definition: parts", "oxygenator, exchanger, filter"),
            Map.entry("definition: aggregation", "not reported"),
            Map.entry("blood flow", "1.0"),
            Map.entry("blood flow, unit", "L/min"),
            Map.entry("air challenge", "20 mL/min continuous"),
            Map.entry("test model", "bench-blood-animal"),
            Map.entry("blood species", "bovine"),
            Map.entry("blood temperature", "37"),
            Map.entry("blood temperature, unit", "°C"),
            Map.entry("smallest bubble counted", "20"),
            Map.entry("smallest bubble counted, unit", "µm"),
            Map.entry("bubble detector", "ultrasound-pulse-echo"),
            Map.entry("page", "6"),
            Map.entry("table", "3"),
            Map.entry("row", "2"),
            Map.entry("quote", "Skarrow Kid | 20 mL/min continuous | count reduction 62 %")));

    @TempDir
    Path folder;

    private Path library;

    @BeforeEach
    void aPaperReadOnce() throws IOException {
        library = LibraryCopy.of(Path.of("evidence"), folder.resolve("library"));
        var text = Files.readString(library.resolve(RECORD))
                .replaceAll("read: \\[\\{by: AB, on: 2026-09-14\\}.*\\]", "read: [{by: AB, on: 2026-09-14}]")
                .replaceAll(" +settled: .*\n", "");
        assertThat(text).doesNotContain("CD");
        Files.writeString(library.resolve(RECORD), text);
    }

    @Test
    void theFormOfTheSecondReaderShowsNothingOfTheFirst() {
        secondForm();
        FilledForms.fill(form(), book -> {
            var shown = new HashMap<String, String>();
            for (var cell : book.getSheet("Values").getRow(4)) {
                if (!cell.getStringCellValue().isEmpty()) {
                    shown.put(
                            book.getSheet("Values")
                                    .getRow(3)
                                    .getCell(cell.getColumnIndex())
                                    .getStringCellValue(),
                            cell.getStringCellValue());
                }
            }
            assertThat(shown)
                    .containsOnly(
                            Map.entry("id", "B25"),
                            Map.entry("source", "bonvale-2022"),
                            Map.entry("device", "quillane-15"),
                            Map.entry("metric", "bubble-volume-reduction"));
        });
    }

    @Test
    void aDisputedValueIsKeptOutUntilBothSettleIt() throws IOException {
        secondForm();
        var wrongRow = new HashMap<>(B25);
        wrongRow.put("number", "94.0");
        fill(List.of(wrongRow, B26));
        var compare = run(
                "second",
                "compare",
                form().toString(),
                "--library",
                library.toString(),
                "--out",
                differences().toString());

        // two values with a number each, one of them alike; a category field with both alike
        assertThat(compare.out()).containsPattern("number +1 of 2\n");
        assertThat(compare.out()).containsPattern("kind of figure +2 of 2, kappa one category only\n");
        assertThat(compare.out()).containsPattern("air challenge +2 of 2\n");
        var disputed = Files.readString(library.resolve(RECORD));
        assertThat(disputed).contains("{by: CD, on: 2026-11-20, agrees: no, found: 94.0 %}");
        assertThat(disputed).contains("{by: CD, on: 2026-11-20, agrees: yes}");
        assertThat(CommandLineUse.run("check", library.toString()).out()).contains("HOLD readers-disagree");

        FilledForms.fill(differences(), book -> {
            var sheet = book.getSheet("Differences");
            assertThat(cell(sheet, "field")).isEqualTo("number");
            assertThat(cell(sheet, "first reader")).isEqualTo("90.4");
            assertThat(cell(sheet, "second reader")).isEqualTo("94.0");
            FilledForms.row(
                    sheet,
                    0,
                    Map.of(
                            "agreed value", "90.4",
                            "settled by", "AB and CD",
                            "settled on", "2026-11-20",
                            "reason", "wrong row",
                            "in words", "94.0 stands in the row for number"));
        });
        run("second", "settle", differences().toString(), "--library", library.toString());

        assertThat(Files.readString(library.resolve(RECORD)))
                .contains(
                        "settled: {by: AB and CD, on: 2026-11-20, reason: \"wrong row: 94.0 stands in the row for number\"}");
        assertThat(CommandLineUse.run("check", library.toString()).out()).doesNotContain("readers-disagree");
    }

    @Test
    void whatBothReadAlikeIsAgreedWithoutAWorkbook() throws IOException {
        secondForm();
        fill(List.of(B25, B26));
        var compare = run(
                "second",
                "compare",
                form().toString(),
                "--library",
                library.toString(),
                "--out",
                differences().toString());
        assertThat(compare.out()).contains("Both readers agree on every field.");
        assertThat(differences()).doesNotExist();
        assertThat(Files.readString(library.resolve(RECORD)).split("by: CD, on: 2026-11-20, agrees: yes", -1))
                .hasSize(3);
    }

    @Test
    void aStrictFormHoldsNoValuesAndTheyAreFoundByTheirPlace() {
        var make = run(
                "second",
                "form",
                library.toString(),
                "--source",
                "bonvale-2022",
                "--strict",
                "--out",
                form().toString());
        assertThat(make.code()).isZero();
        FilledForms.fill(form(), book -> {
            FilledForms.start(book, "CD", "2026-11-20");
            FilledForms.row(book.getSheet("Values"), 0, B25);
            FilledForms.row(
                    book.getSheet("Values"),
                    0,
                    Map.of("source", "bonvale-2022", "device", "quillane-15", "metric", "bubble-volume-reduction"));
        });
        var compare = run(
                "second",
                "compare",
                form().toString(),
                "--library",
                library.toString(),
                "--out",
                differences().toString());
        assertThat(compare.out()).contains("only the first reader has bonvale-2022: B26");
        assertThat(compare.out()).containsPattern("number +1 of 1\n");
    }

    private void secondForm() {
        run("second", "form", library.toString(), "--source", "bonvale-2022", "--out", form().toString());
    }

    private void fill(List<Map<String, String>> rows) {
        FilledForms.fill(form(), book -> {
            FilledForms.start(book, "CD", "2026-11-20");
            for (int i = 0; i < rows.size(); i++) {
                FilledForms.row(book.getSheet("Values"), i, rows.get(i));
            }
        });
    }

    private static String cell(XSSFSheet sheet, String heading) {
        return FilledForms.cell(sheet, 0, heading).getStringCellValue();
    }

    private CommandLineUse.Run run(String... args) {
        var run = CommandLineUse.run(args);
        assertThat(run.code()).as(run.err()).isZero();
        return run;
    }

    private Path form() {
        return folder.resolve("intake_CD.xlsx");
    }

    private Path differences() {
        return folder.resolve("reconcile.xlsx");
    }
}
