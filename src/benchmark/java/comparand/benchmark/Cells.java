package comparand.benchmark;

import comparand.document.Block;
import comparand.document.Cell;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Look;
import comparand.document.Section;
import comparand.write.xlsx.WorkbookWriter;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;

/** A workbook of half a million styled cells, 20,000 rows of 25, with our writer: every fifth column words, the others numbers. */
final class Cells {

    static final int ROWS = 20_000;
    static final int COLUMNS = 25;

    private Cells() {}

    /** Argument: the workbook to write. */
    public static void main(String[] args) throws IOException {
        try (var out = new BufferedOutputStream(Files.newOutputStream(Path.of(args[0])))) {
            new WorkbookWriter().write(document(), out);
        }
    }

    private static Document document() {
        var columns = IntStream.range(0, COLUMNS)
                .mapToObj(c -> new Block.Column(
                        heading(c), 10, isWord(c) ? Block.Align.LEFT : Block.Align.RIGHT, c == 0))
                .toList();
        var rows = IntStream.range(0, ROWS)
                .mapToObj(r -> IntStream.range(0, COLUMNS).mapToObj(c -> cell(r, c)).toList())
                .toList();
        var table = new Block.Table("Cells", "Cells", columns, rows, List.of());
        var edition = new Edition(
                "Cells",
                "",
                LocalDate.of(2026, 11, 26),
                "Benchmark",
                "Comparand",
                "0".repeat(64),
                "draft",
                List.of("INVENTED DATA"),
                List.of(),
                "en");
        return new Document(
                "cells",
                Document.Form.WORKBOOK,
                edition,
                Look.PLAIN,
                List.of(new Section("Cells", "Cells", List.of(table))));
    }

    private static Cell cell(int row, int column) {
        if (isWord(column)) {
            return new Cell.Words(word(row, column), "", Cell.Words.Weight.PLAIN);
        }
        var number = number(row, column);
        return new Cell.Figure(number.doubleValue(), number, "", "", '.', "");
    }

    static String heading(int column) {
        return "Column " + (column + 1);
    }

    static boolean isWord(int column) {
        return column % 5 == 0;
    }

    static String word(int row, int column) {
        return "word " + (row * 31 + column) % 997;
    }

    static int decimals(int column) {
        return column % 3;
    }

    static BigDecimal number(int row, int column) {
        return BigDecimal.valueOf((row * 7919L + column * 104729L) % 100_000, decimals(column));
    }
}
