package comparand.demo;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.demo.CaseDataMess.Injected;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said to be spoilt is spoilt, and nothing else. */
class CaseDataMessTest {

    private static final List<String> TABLES = List.of(
            "norrisgate-cases.csv",
            "norrisgate-samples.csv",
            "Cases",
            "Samples",
            "lake-ferran-faelle.csv",
            "lake-ferran-labor.csv",
            "lake-ferran-proben.csv");

    @TempDir
    Path folder;

    private List<Injected> injected = List.of();

    @BeforeEach
    void spoil() throws IOException {
        CaseData.write(folder);
        injected = CaseDataMess.inject(folder);
    }

    @Test
    void everyKindOccurs() {
        assertThat(injected.stream().map(Injected::kind).collect(Collectors.toSet()))
                .isEqualTo(EnumSet.allOf(CaseDataMessKind.class));
    }

    /** Both folders are read by other code than that which spoils. */
    @Test
    void theCellsThatDifferAreThoseThatAreNamed() {
        var clean = cells(new CaseDataRead(CaseData.FOLDER), Map.of());
        var spoilt = cells(new CaseDataRead(folder), Map.of("haemoglobin_gdl", "hb_gdl"));
        var expected = new TreeMap<String, String>();
        for (var one : injected) {
            switch (one.kind()) {
                case HEADING_RENAMED, HIDDEN_CORRECTION, ROW_TWICE -> {}
                default -> expected.put(address(one), one.original() + " -> " + one.changed());
            }
        }

        var found = new TreeMap<String, String>();
        clean.forEach((address, text) -> {
            var now = Objects.requireNonNull(spoilt.get(address), address);
            if (!now.equals(text)) {
                found.put(address, text + " -> " + now);
            }
        });
        assertThat(found).isEqualTo(expected);
    }

    @Test
    void theRowsThatAreAddedAreThoseThatAreNamed() {
        var clean = cells(new CaseDataRead(CaseData.FOLDER), Map.of()).keySet();
        var spoilt = cells(new CaseDataRead(folder), Map.of("haemoglobin_gdl", "hb_gdl"));
        var added = new TreeSet<String>();
        spoilt.keySet().stream()
                .filter(a -> !clean.contains(a))
                .forEach(a -> added.add(a.substring(0, a.lastIndexOf('!'))));
        var twice = injected.stream()
                .filter(i -> i.kind() == CaseDataMessKind.ROW_TWICE)
                .toList();

        assertThat(added)
                .isEqualTo(twice.stream()
                        .map(i -> table(i) + "!" + i.line())
                        .collect(Collectors.toCollection(TreeSet::new)));
        assertThat(twice).isNotEmpty().allSatisfy(i -> {
            int from = Integer.parseInt(i.changed().replaceAll("\\D", ""));
            assertThat(row(spoilt, table(i), i.line())).isNotEmpty().isEqualTo(row(spoilt, table(i), from));
        });
    }

    @Test
    void aHeadingAndAHiddenSheetAreChangedToo() throws IOException {
        assertThat(Files.readAllLines(folder.resolve("norrisgate-samples.csv")).get(0))
                .contains(",haemoglobin_gdl,")
                .doesNotContain(",hb_gdl,");
        var hidden = injected.stream()
                .filter(i -> i.kind() == CaseDataMessKind.HIDDEN_CORRECTION)
                .findFirst()
                .orElseThrow();
        var corrected = new CaseDataRead(folder).sheet(hidden.sheet());
        assertThat(corrected).hasSize(1);
        assertThat(plain(CaseDataRead.word(corrected.get(0), hidden.column()))).isEqualTo(hidden.changed());
        assertThat(hidden.changed()).isNotEqualTo(hidden.original());
    }

    @Test
    void noRowOfSamplesIsSpoiltInTwoWays() {
        var kinds = injected.stream()
                .filter(i -> i.kind() != CaseDataMessKind.HEADING_RENAMED)
                .collect(Collectors.groupingBy(
                        i -> table(i) + "!" + i.line(), Collectors.mapping(Injected::kind, Collectors.toSet())));

        assertThat(kinds.values()).allSatisfy(k -> assertThat(k).hasSize(1));
    }

    @Test
    void theSameFilesAreSpoiltInTheSameWay(@TempDir Path other) throws IOException {
        CaseData.write(other);

        assertThat(CaseDataMess.inject(other)).isEqualTo(injected);
        for (var file : CaseData.files().keySet()) {
            assertThat(other.resolve(file)).hasSameBinaryContentAs(folder.resolve(file));
        }
    }

    @Test
    void oneKindCanBeHadAlone(@TempDir Path other) throws IOException {
        CaseData.write(other);
        var alone = CaseDataMess.inject(other, Set.of(CaseDataMessKind.SIDES_SWAPPED));

        assertThat(alone).isNotEmpty().allSatisfy(i -> assertThat(i.kind()).isEqualTo(CaseDataMessKind.SIDES_SWAPPED));
        assertThat(alone.size() % 8).isZero();
    }

    private static String table(Injected one) {
        return one.sheet().isEmpty() ? one.file() : one.sheet();
    }

    private static String address(Injected one) {
        var column = one.column().equals("haemoglobin_gdl") ? "hb_gdl" : one.column();
        return "%s!%d!%s".formatted(table(one), one.line(), column);
    }

    /** Every cell of every table by table, line and heading. */
    private static Map<String, String> cells(CaseDataRead files, Map<String, String> renamed) {
        var cells = new TreeMap<String, String>();
        for (var table : TABLES) {
            boolean text = table.endsWith(".csv");
            int line = text ? 1 : 3;
            for (var row : text ? files.csv(table) : files.sheet(table)) {
                line++;
                for (var cell : row.entrySet()) {
                    var heading = renamed.getOrDefault(cell.getKey(), cell.getKey());
                    cells.put(
                            "%s!%d!%s".formatted(table, line, heading),
                            text ? cell.getValue() : plain(cell.getValue()));
                }
            }
        }
        return cells;
    }

    private static Map<String, String> row(Map<String, String> cells, String table, int line) {
        var start = table + "!" + line + "!";
        return cells.entrySet().stream()
                .filter(e -> e.getKey().startsWith(start))
                .collect(Collectors.toMap(e -> e.getKey().substring(start.length()), Map.Entry::getValue));
    }

    /** Numbers of the workbook without the zeros that Java adds. */
    private static String plain(String text) {
        return text.matches("-?[0-9.]+(E-?[0-9]+)?")
                ? new BigDecimal(text).stripTrailingZeros().toPlainString()
                : text;
    }
}
