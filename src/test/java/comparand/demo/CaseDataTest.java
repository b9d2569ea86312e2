package comparand.demo;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The committed case files are those of the generator, and what they say is what the demo scenario prints. The summaries are
 * recomputed here from the files by plain code; the expected texts are the scenario's.
 */
class CaseDataTest {

    private static final CaseDataRead FILES = new CaseDataRead(CaseData.FOLDER);

    private final List<CaseDataReadCase> rows = CaseDataReadCase.all(FILES);
    private final List<CaseDataReadCase> counted = CaseDataReadCase.counted(FILES);

    @Test
    void theCommittedFilesAreThoseOfTheGenerator() throws IOException {
        for (var file : CaseData.filesOfLater().entrySet()) {
            assertThat(Files.readAllBytes(CaseData.LATER.resolve(file.getKey())))
                    .as(file.getKey())
                    .isEqualTo(file.getValue());
        }
        for (var file : CaseData.files().entrySet()) {
            assertThat(Files.readAllBytes(CaseData.FOLDER.resolve(file.getKey())))
                    .as("%s: run the main method of comparand.demo.CaseData with the argument %s"
                            .formatted(file.getKey(), CaseData.FOLDER))
                    .isEqualTo(file.getValue());
        }
    }

    @Test
    @DisplayName("57 rows; one twice, one without a device, one gone on to life support; 54 count")
    void rowsThatCount() {
        assertThat(rows).hasSize(57);
        assertThat(rows.stream().distinct()).hasSize(56);
        assertThat(rows.stream()
                        .collect(groupingBy(CaseDataReadCase::id, counting()))
                        .entrySet())
                .filteredOn(e -> e.getValue() > 1)
                .containsExactly(Map.entry("N-17", 2L));
        assertThat(rows.stream().filter(c -> c.device().isEmpty()).map(CaseDataReadCase::id))
                .containsExactly("A-18");
        assertThat(rows.stream().filter(c -> c.converted().equals("y")).map(CaseDataReadCase::id))
                .containsExactly("F-14");
        assertThat(counted).hasSize(54);
    }

    @Test
    void everyDeviceMeetsEveryOtherInOneHospital() {
        assertThat(counted.stream().collect(groupingBy(c -> c.hospital() + c.device(), counting())))
                .containsExactlyInAnyOrderEntriesOf(
                        Map.of("NQ", 14L, "NM", 10L, "AQ", 11L, "AS", 6L, "FM", 7L, "FS", 6L));
    }

    @Test
    @DisplayName(
            "no change-outs; Mirrowen above its labelled 1.2 L/min in 3 of 17; two infants under 4 kg with Skarrow at A")
    void otherCounts() {
        assertThat(counted).extracting(CaseDataReadCase::changed).containsOnly("n");
        assertThat(counted).extracting(CaseDataReadCase::donor).contains("y", "n");
        assertThat(counted)
                .filteredOn(c -> c.device().equals("M") && c.fullFlow() > 1.2)
                .hasSize(3);
        assertThat(counted)
                .filteredOn(c ->
                        !c.device().equals("M") && c.fullFlow() > (c.device().equals("Q") ? 1.5 : 2.0))
                .isEmpty();
        assertThat(counted)
                .filteredOn(c -> c.hospital().equals("A") && c.device().equals("S") && c.weight() < 4)
                .hasSize(2);
        assertThat(counted.stream()
                        .filter(c -> Double.isNaN(c.freeHaemoglobin()))
                        .collect(groupingBy(CaseDataReadCase::device, counting())))
                .isEqualTo(Map.of("Q", 2L, "M", 1L, "S", 2L));
    }

    @TestFactory
    @DisplayName("the summaries are those of the scenario, to the printed digit")
    Stream<DynamicTest> summaries() {
        return Stream.of(
                summary("NQ", "pressure drop", CaseDataReadCase::pressureDrop, "58", "12", 14),
                summary("AQ", "pressure drop", CaseDataReadCase::pressureDrop, "60", "13", 11),
                summary("NM", "pressure drop", CaseDataReadCase::pressureDrop, "71", "13", 10),
                summary("FM", "pressure drop", CaseDataReadCase::pressureDrop, "70", "14", 7),
                summary("AS", "pressure drop", CaseDataReadCase::pressureDrop, "52", "12", 6),
                summary("FS", "pressure drop", CaseDataReadCase::pressureDrop, "55", "11", 6),
                summary("Q", "free haemoglobin", CaseDataReadCase::freeHaemoglobin, "33", "14", 23),
                summary("M", "free haemoglobin", CaseDataReadCase::freeHaemoglobin, "36", "16", 16),
                summary("S", "free haemoglobin", CaseDataReadCase::freeHaemoglobin, "27", "12", 10),
                summary("Q", "platelet change", CaseDataReadCase::plateletChange, "-33", "11", 25),
                summary("M", "platelet change", CaseDataReadCase::plateletChange, "-35", "12", 17),
                summary("S", "platelet change", CaseDataReadCase::plateletChange, "-31", "13", 12),
                summary("Q", "minutes of bypass", CaseDataReadCase::bypass, "121", "27", 25));
    }

    private DynamicTest summary(
            String group, String what, ToDoubleFunction<CaseDataReadCase> result, String mean, String sd, int n) {
        return dynamicTest("%s, %s: %s (%s) n %d".formatted(what, group, mean, sd, n), () -> {
            var moments = moments(group, result);
            assertThat(printed(moments.getMean(), 0)).isEqualTo(mean);
            assertThat(printed(moments.getStandardDeviation(), 0)).isEqualTo(sd);
            assertThat(moments.getN()).isEqualTo(n);
        });
    }

    @Test
    @DisplayName("14: free haemoglobin, Skarrow against Quillane: -6 (-16.0 to 4.0)")
    void freeHaemoglobinIsNotSettled() {
        var skarrow = moments("S", CaseDataReadCase::freeHaemoglobin);
        var quillane = moments("Q", CaseDataReadCase::freeHaemoglobin);

        assertThat(welch(skarrow, quillane, 0, 1)).isEqualTo("-6 (-16.0 to 4.0)");
    }

    @Test
    @DisplayName("15: platelets, Mirrowen against the published -38 (11.7) n 31: +3 (-4.3 to 10.3)")
    void plateletsAgainstAPublishedMean() {
        var published = new double[] {-38, 11.7, 31};
        var ours = moments("M", CaseDataReadCase::plateletChange);

        assertThat(welch(values(ours), published, 0, 1)).isEqualTo("3 (-4.3 to 10.3)");
    }

    @Test
    @DisplayName("17: pressure drop at Norrisgate, Mirrowen against Quillane: +13 (2 to 24)")
    void pressureDropWhereBothAreUsed() {
        var mirrowen = moments("NM", CaseDataReadCase::pressureDrop);
        var quillane = moments("NQ", CaseDataReadCase::pressureDrop);

        assertThat(welch(mirrowen, quillane, 0, 0)).isEqualTo("13 (2 to 24)");
    }

    @Test
    void everyFileSaysThatItIsInvented() throws IOException {
        for (var file : CaseData.files().keySet()) {
            if (file.endsWith(".csv")) {
                var lines = Files.readAllLines(
                        CaseData.FOLDER.resolve(file),
                        Charset.forName(file.startsWith("lake") ? "windows-1252" : "UTF-8"));
                assertThat(lines.get(1)).as(file).containsPattern("[,;](invented data|erfundene Daten)$");
            }
        }
        try (var in = Files.newInputStream(CaseData.FOLDER.resolve("st-aldwyn.xlsx"));
                var workbook = new XSSFWorkbook(in)) {
            workbook.forEach(
                    s -> assertThat(s.getRow(1).getCell(0).getStringCellValue()).startsWith("Invented data"));
            assertThat(workbook.isSheetHidden(workbook.getSheetIndex("alt"))).isTrue();
            assertThat(workbook.getNumberOfSheets()).isEqualTo(3);
        }
    }

    @Test
    void theGeneratorWritesWhereItIsTold(@TempDir Path folder) throws IOException {
        CaseData.main(new String[] {folder.resolve("new").toString()});

        for (var file : CaseData.files().entrySet()) {
            assertThat(folder.resolve("new").resolve(file.getKey())).hasBinaryContent(file.getValue());
        }
    }

    /** The results of a device ({@code Q}) or of a device in one hospital ({@code NQ}), those that are missing left out. */
    private SummaryStatistics moments(String group, ToDoubleFunction<CaseDataReadCase> result) {
        var moments = new SummaryStatistics();
        counted.stream()
                .filter(c -> (c.hospital() + c.device()).endsWith(group))
                .mapToDouble(result)
                .filter(x -> !Double.isNaN(x))
                .forEach(moments::addValue);
        return moments;
    }

    private static double[] values(SummaryStatistics moments) {
        return new double[] {moments.getMean(), moments.getStandardDeviation(), moments.getN()};
    }

    private static String welch(SummaryStatistics one, SummaryStatistics other, int decimals, int ofInterval) {
        return welch(values(one), values(other), decimals, ofInterval);
    }

    /** Welch, Biometrika 1947;34:28-35, from mean, SD and n of two groups: difference and 95 % interval. */
    private static String welch(double[] one, double[] other, int decimals, int ofInterval) {
        double a = one[1] * one[1] / one[2];
        double b = other[1] * other[1] / other[2];
        double freedom = (a + b) * (a + b) / (a * a / (one[2] - 1) + b * b / (other[2] - 1));
        double half = new TDistribution(freedom).inverseCumulativeProbability(0.975) * Math.sqrt(a + b);
        double difference = one[0] - other[0];
        return printed(difference, decimals)
                + DoubleStream.of(difference - half, difference + half)
                        .mapToObj(x -> printed(x, ofInterval))
                        .collect(Collectors.joining(" to ", " (", ")"));
    }

    private static String printed(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
