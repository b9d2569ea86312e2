package comparand.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Reads outputs back through other eyes than those that wrote them. */
public final class ReadBack {

    private ReadBack() {}

    /** The text of a PDF, blanks and line ends folded into single blanks. */
    public static String pdf(Path file) {
        try (var document = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " ");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every row of every sheet as a spreadsheet program would show it. */
    public static List<List<String>> workbook(Path file) {
        var rows = new ArrayList<List<String>>();
        var formatter = new DataFormatter(Locale.ROOT);
        formatter.setUseCachedValuesForFormulaCells(true);
        try (var workbook = new XSSFWorkbook(OPCPackage.open(file.toFile(), PackageAccess.READ))) {
            workbook.forEach(sheet -> sheet.forEach(row -> {
                var cells = new ArrayList<String>();
                row.forEach(cell -> cells.add(formatter.formatCellValue(cell)));
                rows.add(cells);
            }));
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InvalidFormatException e) {
            throw new IllegalStateException(e);
        }
    }
}
