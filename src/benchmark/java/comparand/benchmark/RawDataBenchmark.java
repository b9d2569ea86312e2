package comparand.benchmark;

import comparand.diag.Span;
import comparand.model.CellNumber;
import comparand.model.RowSource;
import comparand.read.csv.CsvRows;
import comparand.read.workbook.WorkbookRows;
import comparand.unit.DecimalSign;
import java.io.BufferedWriter;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;

/**
 * Writes large raw files and reads every number in them: {@code java -Xmx512m ... RawDataBenchmark FOLDER ROWS csv|xlsx}. Prints
 * seconds, the highest use of the heap after a collection, and a sum that both kinds of file must share.
 */
final class RawDataBenchmark {

    private static final int COLUMNS = 20;

    private RawDataBenchmark() {}

    public static void main(String[] args) throws IOException {
        var folder = Files.createDirectories(Path.of(args[0]));
        int rows = Integer.parseInt(args[1]);
        var kind = args[2];
        var file = folder.resolve("rows-" + rows + "." + kind);
        if (!Files.exists(file)) {
            if (kind.equals("csv")) {
                writeCsv(file, rows);
            } else {
                writeWorkbook(file, rows);
            }
        }
        long start = System.nanoTime();
        RowSource source = kind.equals("csv")
                ? new CsvRows(file, file.toString(), ';', StandardCharsets.UTF_8, OptionalInt.empty())
                : WorkbookRows.open(
                        file,
                        file.toString(),
                        Optional.of("Samples"),
                        Span.startOf("study.yaml"),
                        1,
                        new ArrayList<>());
        var counted = new long[2];
        var sum = new double[1];
        source.forEach(row -> {
            counted[0]++;
            for (int i = 2; i < COLUMNS; i++) {
                sum[0] += CellNumber.read(row.cells().get(i), Optional.of(DecimalSign.COMMA))
                        .orThrow()
                        .toDouble();
                counted[1]++;
            }
        });
        long peak = ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(p -> p.getType() == MemoryType.HEAP)
                .mapToLong(p -> p.getPeakUsage().getUsed())
                .sum();
        System.out.printf(
                Locale.ROOT,
                "%s: %d rows, %d numbers, sum %.2f, %.1f s, peak heap %d MiB of %d MiB, file %d MiB%n",
                kind,
                counted[0],
                counted[1],
                sum[0],
                (System.nanoTime() - start) / 1e9,
                peak >> 20,
                Runtime.getRuntime().maxMemory() >> 20,
                Files.size(file) >> 20);
    }

    private static String name(int row, int column) {
        return column == 0 ? "U-" + row % 997 : "C-" + row;
    }

    /** The same numbers for both kinds of file: one seed, row by row. */
    private static List<String> numbers(Random random) {
        var numbers = new ArrayList<String>();
        for (int i = 2; i < COLUMNS; i++) {
            int hundredths = random.nextInt(1_000_000);
            numbers.add(hundredths / 100 + "." + hundredths % 100 / 10 + hundredths % 10);
        }
        return numbers;
    }

    private static void writeCsv(Path file, int rows) throws IOException {
        var random = new Random(1);
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            for (int c = 0; c < COLUMNS; c++) {
                out.write("c" + c + (c == COLUMNS - 1 ? "\n" : ";"));
            }
            for (int r = 0; r < rows; r++) {
                out.write(name(r, 0) + ";" + name(r, 1));
                for (var number : numbers(random)) {
                    out.write(";" + number.replace('.', ','));
                }
                out.write("\n");
            }
        }
    }

    private static void writeWorkbook(Path file, int rows) throws IOException {
        var random = new Random(1);
        try (var book = new SXSSFWorkbook(null, 100, true, true);
                var out = Files.newOutputStream(file)) {
            var sheet = book.createSheet("Samples");
            var heading = sheet.createRow(0);
            for (int c = 0; c < COLUMNS; c++) {
                heading.createCell(c).setCellValue("c" + c);
            }
            for (int r = 0; r < rows; r++) {
                var row = sheet.createRow(r + 1);
                row.createCell(0).setCellValue(name(r, 0));
                row.createCell(1).setCellValue(name(r, 1));
                int c = 2;
                for (var number : numbers(random)) {
                    row.createCell(c++).setCellValue(Double.parseDouble(number));
                }
            }
            book.write(out);
        }
    }
}
