package comparand.read;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.diag.Span;
import comparand.model.CellNumber;
import comparand.model.RowSource;
import comparand.model.library.Separator;
import comparand.read.csv.CsvRows;
import comparand.read.workbook.WorkbookRows;
import comparand.support.Books;
import comparand.unit.DecimalSign;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/** The same data give the same rows, whichever separator, decimal sign or encoding they were saved with, or as a workbook. */
class SameRowsTest {

    private static final List<String> HEADER = List.of("unit", "flow", "Rückfluss");
    private static Path folder = Path.of("target");

    @BeforeContainer
    static void makeFolder() throws IOException {
        folder = Files.createTempDirectory("same-rows");
    }

    @AfterContainer
    static void clear() throws IOException {
        try (var files = Files.list(folder)) {
            for (var file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }

    /** What somebody measured; an empty number was not taken. */
    record Measured(String unit, Optional<BigDecimal> flow, Optional<BigDecimal> back) {}

    @Provide
    Arbitrary<Measured> measured() {
        var unit = Arbitraries.of("Q-01", "Q;02", "M,03", "S \"4\"", "Größe|5", "a\nb", "7");
        var number = Arbitraries.bigDecimals()
                .between(new BigDecimal("-9999"), new BigDecimal("99999"))
                .ofScale(3)
                .map(n -> n.signum() == 0 ? BigDecimal.ZERO : n.stripTrailingZeros())
                .map(n -> n.scale() < 0 ? new BigDecimal(n.toPlainString()) : n)
                .optional(0.8);
        return Combinators.combine(unit, number, number).as(Measured::new);
    }

    @Property(tries = 60)
    void separatorDecimalSignAndEncodingSayNothing(
            @ForAll("measuredRows") List<Measured> rows,
            @ForAll Separator separator,
            @ForAll DecimalSign decimal,
            @ForAll("encodings") String encoding,
            @ForAll("lineEnds") String lineEnd)
            throws IOException {
        assertThat(text(rows, separator, decimal, encoding, lineEnd)).isEqualTo(book(rows));
    }

    @Provide
    Arbitrary<List<Measured>> measuredRows() {
        return measured().list().ofMinSize(1).ofMaxSize(12);
    }

    @Provide
    Arbitrary<String> encodings() {
        return Arbitraries.of("UTF-8", "windows-1252", "ISO-8859-1", "UTF-16");
    }

    @Provide
    Arbitrary<String> lineEnds() {
        return Arbitraries.of("\n", "\r\n");
    }

    private static List<String> text(
            List<Measured> rows, Separator separator, DecimalSign decimal, String encoding, String lineEnd)
            throws IOException {
        var sign = String.valueOf(separator.sign());
        var content = new StringBuilder(String.join(sign, HEADER)).append(lineEnd);
        for (var row : rows) {
            content.append(quoted(row.unit))
                    .append(sign)
                    .append(number(row.flow, decimal))
                    .append(sign)
                    .append(number(row.back, decimal))
                    .append(lineEnd);
        }
        var file = folder.resolve("rows.csv");
        Files.writeString(file, content, Charset.forName(encoding));
        return rows(
                new CsvRows(file, "rows.csv", separator.sign(), Charset.forName(encoding), OptionalInt.empty()),
                decimal);
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\"", "\"\"") + "\"";
    }

    private static String number(Optional<BigDecimal> number, DecimalSign decimal) {
        return number.map(n -> quoted(n.toPlainString().replace('.', decimal.sign())))
                .orElse("");
    }

    private static List<String> book(List<Measured> rows) throws IOException {
        var file = Books.write(folder.resolve("rows.xlsx"), book -> {
            var sheet = book.createSheet("Rows");
            Books.set(sheet.createRow(0), 0, HEADER.toArray());
            for (int i = 0; i < rows.size(); i++) {
                Books.set(
                        sheet.createRow(i + 1),
                        0,
                        rows.get(i).unit,
                        rows.get(i).flow.<Object>map(n -> n).orElse(""),
                        rows.get(i).back.<Object>map(n -> n).orElse(""));
            }
        });
        return rows(
                WorkbookRows.open(
                        file, "rows.xlsx", Optional.of("Rows"), Span.startOf("study.yaml"), 1, new ArrayList<>()),
                DecimalSign.POINT);
    }

    /** Headings and rows as words: names as they are, numbers by their value. */
    private static List<String> rows(RowSource source, DecimalSign decimal) {
        var found = new ArrayList<String>();
        found.add(String.join("|", source.header()));
        source.forEach(row -> found.add(row.cells().get(0).text() + "|"
                + row.cells().subList(1, row.cells().size()).stream()
                        .map(c -> c.isBlank()
                                ? "not taken"
                                : CellNumber.read(c, Optional.of(decimal))
                                        .orThrow()
                                        .value()
                                        .toPlainString())
                        .collect(Collectors.joining("|"))));
        return found;
    }
}
