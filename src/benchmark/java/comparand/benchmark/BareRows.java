package comparand.benchmark;

import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.nio.file.Path;

/** Reads every row of a file with the library alone, and every cell from the third on as a number. */
final class BareRows {

    private BareRows() {}

    /** Argument: the file. */
    public static void main(String[] args) throws IOException {
        double sum = 0;
        long rows = -1;
        try (var csv = CsvReader.builder().ofCsvRecord(Path.of(args[0]))) {
            for (var record : csv) {
                if (rows >= 0) {
                    for (int i = 2; i < record.getFieldCount(); i++) {
                        sum += Double.parseDouble(record.getField(i));
                    }
                }
                rows++;
            }
        }
        System.out.println(rows + " rows, sum " + sum);
    }
}
