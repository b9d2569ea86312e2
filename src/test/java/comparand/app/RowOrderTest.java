package comparand.app;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import comparand.model.Comparand;
import comparand.support.LibraryCopy;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The order in which rows and columns stand in a raw file says nothing, and changes nothing: not even the last bit. */
class RowOrderTest {

    private static final String DEMO = "evidence";
    private static final List<RawFile> FILES = List.of(
            new RawFile("bench-norrisgate/flow-runs.csv", ",", UTF_8),
            new RawFile("bench-norrisgate/exchanger-runs.csv", ",", UTF_8),
            new RawFile("bench-norrisgate/haemolysis-runs.csv", ",", UTF_8),
            new RawFile("bench-norrisgate/bubble-runs.csv", ",", UTF_8),
            new RawFile("three-hospitals/norrisgate-cases.csv", ",", UTF_8),
            new RawFile("three-hospitals/norrisgate-samples.csv", ",", UTF_8),
            new RawFile("three-hospitals/lake-ferran-faelle.csv", ";", Charset.forName("windows-1252")),
            new RawFile("three-hospitals/lake-ferran-labor.csv", ";", Charset.forName("windows-1252")),
            new RawFile("three-hospitals/lake-ferran-proben.csv", ";", Charset.forName("windows-1252")));

    /** The first row behind the headings of the workbook, and the row left out by its number, both counted from 0. */
    private static final int FIRST_ROW = 3;

    private static final int NAMED_ROW = 20;

    private record RawFile(String name, String separator, Charset encoding) {}

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void rowsAndColumnsInAnyOrderGiveTheSameComparands(long seed) throws IOException {
        var shuffled = LibraryCopy.of(Path.of(DEMO), folder.resolve("shuffled"));
        for (var file : FILES) {
            shuffle(shuffled.resolve("studies").resolve(file.name), file.separator, file.encoding, new Random(seed));
        }
        shuffleWorkbook(shuffled.resolve("studies/three-hospitals/st-aldwyn.xlsx"), new Random(seed));

        assertThat(summaries(shuffled)).isEqualTo(summaries(Path.of(DEMO)));
    }

    @Test
    void theShuffledFilesAreNotTheOldOnes() throws IOException {
        var file = Files.writeString(folder.resolve("x.csv"), "a,b,c\n1,2,3\n4,5,6\n7,8,9\n");

        shuffle(file, ",", UTF_8, new Random(1));

        assertThat(Files.readString(file))
                .doesNotStartWith("a,b,c")
                .contains("7")
                .hasSize(24);
    }

    private static List<String> summaries(Path library) {
        var local = LocalEvidence.of(library.resolve("dossiers/small-oxygenators.yaml"));
        assertThat(local).hasSizeGreaterThan(30);
        return local.stream().map(RowOrderTest::text).toList();
    }

    private static String text(Comparand c) {
        return c.id() + " " + c.summary() + " " + c.sizes() + " " + c.conditions() + " " + c.definition();
    }

    /** Rows in another order on both sheets; the row that a decision names by its number stays where it is. */
    private static void shuffleWorkbook(Path file, Random random) throws IOException {
        try (var in = Files.newInputStream(file);
                var book = new XSSFWorkbook(in)) {
            for (var name : List.of("Cases", "Samples")) {
                var sheet = book.getSheet(name);
                var moved = IntStream.rangeClosed(FIRST_ROW, sheet.getLastRowNum())
                        .filter(r -> !(name.equals("Cases") && r == NAMED_ROW))
                        .boxed()
                        .toList();
                var order = new ArrayList<>(moved);
                Collections.shuffle(order, random);
                var contents =
                        order.stream().map(r -> contents(sheet.getRow(r))).toList();
                for (int i = 0; i < moved.size(); i++) {
                    fill(sheet.getRow(moved.get(i)), contents.get(i));
                }
            }
            try (var out = Files.newOutputStream(file)) {
                book.write(out);
            }
        }
    }

    /** What stands in the cells, results in place of formulas. */
    private static SortedMap<Integer, Object> contents(Row row) {
        var contents = new TreeMap<Integer, Object>();
        for (var cell : row) {
            var type = cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
            if (type == CellType.NUMERIC) {
                contents.put(cell.getColumnIndex(), cell.getNumericCellValue());
            } else if (type == CellType.STRING) {
                contents.put(cell.getColumnIndex(), cell.getStringCellValue());
            }
        }
        return contents;
    }

    private static void fill(Row row, SortedMap<Integer, Object> contents) {
        int cells = Math.max(row.getLastCellNum(), contents.isEmpty() ? 0 : contents.lastKey() + 1);
        for (int c = 0; c < cells; c++) {
            var cell = row.getCell(c, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
            cell.setBlank();
            if (contents.get(c) instanceof Double number) {
                cell.setCellValue(number);
            } else if (contents.get(c) instanceof String text) {
                cell.setCellValue(text);
            }
        }
    }

    private static void shuffle(Path file, String separator, Charset encoding, Random random) throws IOException {
        var rows = Files.readAllLines(file, encoding).stream()
                .map(l -> List.of(l.split(separator, -1)))
                .toList();
        var columns = IntStream.range(0, rows.get(0).size()).boxed().collect(Collectors.toCollection(ArrayList::new));
        Collections.shuffle(columns, random);
        var body = new ArrayList<>(rows.subList(1, rows.size()));
        Collections.shuffle(body, random);
        var all = new ArrayList<List<String>>();
        all.add(rows.get(0));
        all.addAll(body);
        Files.writeString(
                file,
                all.stream()
                        .map(r -> columns.stream().map(r::get).collect(Collectors.joining(separator)) + "\n")
                        .collect(Collectors.joining()),
                encoding);
    }
}
