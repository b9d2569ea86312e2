package comparand.support;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The raw case files of the demo with marks: names of cases, days, ages and remarks carry a word that stands nowhere else,
 * and every measured number digits by which it is known again. Some rows are spoilt, so that much is found and said of them.
 */
public final class MarkedCases {

    /** The word in every cell that tells who somebody is. */
    public static final String WHO = "Zqwho";

    private static final Set<String> NAMING = Set.of(
            "case",
            "day",
            "age_months",
            "remark",
            "Fall",
            "Tag",
            "Alter_Monate",
            "Bemerkung",
            "Case No",
            "Day",
            "Age (months)",
            "Remark");
    private static final Set<String> WRITTEN_AS_IS =
            Set.of("sample", "minute", "Probe", "Minute", "Sample", "Min on bypass", "FiO2", "SaO2", "SvO2");

    /** What stands in a cell instead, by the case and the heading. */
    private static final Map<String, String> SPOILT = Map.ofEntries(
            Map.entry("N-02 weight_kg", "399.9"),
            Map.entry("N-04 p_in_mmhg", "120"),
            Map.entry("N-05 p_in_mmhg", "1777"),
            Map.entry("N-06 free_hb_end_mgdl", "777"),
            Map.entry("N-07 t_blood_out_c", "83"),
            Map.entry("N-08 be_mmoll", "-38"),
            Map.entry("N-09 pao2_mmhg", "31"),
            Map.entry("N-10 flow_lpm", "9.4"),
            Map.entry("N-11 paco2_mmhg", "88"),
            Map.entry("N-12 t_water_in_c", "3.1"),
            Map.entry("N-13 minute", "-7"),
            Map.entry("F-02 Gewicht_kg", "333,3"),
            // one code in two hospitals
            Map.entry("F-03 Fall", "N-03"),
            Map.entry("F-04 Oxygenatorwechsel", "ja"));

    private final Set<String> numbers = new LinkedHashSet<>();
    private int next = 1001;

    private MarkedCases() {}

    /** Marks the files in the folder of the study; gives the marked numbers, with a point. */
    public static Set<String> in(Path study) throws IOException {
        var marks = new MarkedCases();
        marks.csv(study.resolve("norrisgate-cases.csv"), ',', StandardCharsets.UTF_8);
        marks.csv(study.resolve("norrisgate-samples.csv"), ',', StandardCharsets.UTF_8);
        for (var name : List.of("faelle", "labor", "proben")) {
            marks.csv(study.resolve("lake-ferran-" + name + ".csv"), ';', Charset.forName("windows-1252"));
        }
        marks.workbook(study.resolve("st-aldwyn.xlsx"));
        return marks.numbers;
    }

    private void csv(Path file, char separator, Charset charset) throws IOException {
        var lines = Files.readAllLines(file, charset);
        var headings = List.of(lines.get(0).split(String.valueOf(separator), -1));
        var marked = new LinkedHashMap<String, String>();
        var out = new ArrayList<>(List.of(lines.get(0)));
        // a row that stands there twice does so afterwards
        lines.subList(1, lines.size())
                .forEach(line -> out.add(marked.computeIfAbsent(line, l -> marked(headings, l, separator))));
        Files.write(file, out, charset);
    }

    private String marked(List<String> headings, String line, char separator) {
        var cells = line.split(String.valueOf(separator), -1);
        char point = separator == ';' ? ',' : '.';
        var who = cells[0];
        for (int i = 0; i < cells.length; i++) {
            var spoilt = SPOILT.getOrDefault(who + " " + headings.get(i), cells[i]);
            cells[i] = marked(headings.get(i), spoilt, point);
        }
        return String.join(String.valueOf(separator), cells);
    }

    private String marked(String heading, String cell, char point) {
        if (NAMING.contains(heading)) {
            return heading.equals("remark") || heading.equals("Bemerkung")
                    ? WHO + " is a relative of the mayor"
                    : WHO + cell;
        }
        boolean number = cell.matches("-?\\d+([.,]\\d+)?");
        return number && !WRITTEN_AS_IS.contains(heading)
                ? mark(cell.replace(',', '.')).replace('.', point)
                : cell;
    }

    /** The number, a little more: 9.1 is 9.101001 and so on, told apart by four digits behind those of the cell. */
    private String mark(String number) {
        var marked = (number.contains(".") ? number : number + ".0") + "0" + next++;
        numbers.add(new BigDecimal(marked).abs().toPlainString());
        return marked;
    }

    private void workbook(Path file) throws IOException {
        XSSFWorkbook book;
        try (var in = Files.newInputStream(file)) {
            book = new XSSFWorkbook(in);
        }
        try (book) {
            for (var name : List.of("Cases", "Samples")) {
                var sheet = book.getSheet(name);
                var headings = sheet.getRow(2);
                for (int r = 3; r <= sheet.getLastRowNum(); r++) {
                    if (sheet.getRow(r) != null) {
                        row(sheet.getRow(r), headings);
                    }
                }
            }
            try (var out = Files.newOutputStream(file)) {
                book.write(out);
            }
        }
    }

    private void row(Row row, Row headings) {
        var shown = new DataFormatter();
        for (var cell : row) {
            var heading = shown.formatCellValue(headings.getCell(cell.getColumnIndex()));
            var text = shown.formatCellValue(cell);
            if (NAMING.contains(heading)) {
                cell.setCellValue(heading.equals("Remark") ? WHO + " left early" : WHO + text);
            } else if (cell.getCellType() == CellType.NUMERIC && !WRITTEN_AS_IS.contains(heading)) {
                cell.setCellValue(Double.parseDouble(
                        mark(BigDecimal.valueOf(cell.getNumericCellValue()).toPlainString())));
            }
        }
    }
}
