package comparand.read.workbook;

import comparand.diag.Span;
import comparand.model.UnreadableRows;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.apache.poi.xssf.model.StylesTable;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * A workbook while it is read. The office library's limits against archives that unpack into more than they should stay as
 * they are, and its XML parser resolves nothing that lies outside of the file. Links to other workbooks are not followed.
 */
final class OpenWorkbook implements Closeable {

    private final String file;
    private final OPCPackage archive;
    private final XSSFReader parts;
    private final WorkbookXml contents = new WorkbookXml();

    private OpenWorkbook(String file, OPCPackage archive, XSSFReader parts) {
        this.file = file;
        this.archive = archive;
        this.parts = parts;
    }

    /**
     * Opens a workbook for reading.
     *
     * @throws UnreadableRows if it is none
     */
    static OpenWorkbook open(Path path, String file) {
        try {
            var archive = OPCPackage.open(path.toFile(), PackageAccess.READ);
            try {
                var workbook = new OpenWorkbook(file, archive, new XSSFReader(archive));
                try (var xml = workbook.parts.getWorkbookData()) {
                    parse(xml, workbook.contents);
                }
                return workbook;
            } catch (IOException | OpenXML4JException | SAXException | ParserConfigurationException e) {
                archive.revert();
                throw unreadable(file, e);
            } catch (RuntimeException e) {
                archive.revert();
                throw e;
            }
        } catch (OpenXML4JException e) {
            throw unreadable(file, e);
        } catch (UnreadableRows e) {
            throw e;
        } catch (RuntimeException e) {
            // the office library tells of broken files by many kinds of exceptions
            throw unreadable(file, e);
        }
    }

    List<WorkbookXml.Sheet> sheets() {
        return contents.sheets();
    }

    Optional<WorkbookXml.Sheet> sheet(String name) {
        return sheets().stream().filter(s -> s.name().equals(name)).findFirst();
    }

    /** Reads a sheet from top to bottom; a visitor may end it by throwing {@link Enough}. */
    void read(WorkbookXml.Sheet sheet, SheetVisitor visitor) {
        try (var xml = part(sheet)) {
            var texts = new ReadOnlySharedStringsTable(archive, false);
            var styles = parts.getStylesTable();
            parse(
                    xml,
                    new SheetXml(
                            visitor, formats(styles), i -> texts.getItemAt(i).getString()));
        } catch (Enough e) {
            // the visitor has seen what it came for
        } catch (IOException | OpenXML4JException | SAXException | ParserConfigurationException e) {
            throw unreadable(file, e);
        }
    }

    private InputStream part(WorkbookXml.Sheet sheet) throws IOException, OpenXML4JException {
        try {
            return parts.getSheet(sheet.part());
        } catch (OpenXML4JRuntimeException | IllegalArgumentException e) {
            throw new IOException("no such part", e);
        }
    }

    private SheetXml.Formats formats(StylesTable styles) {
        return new SheetXml.Formats() {
            @Override
            public int id(int style) {
                return styles.getStyleAt(style).getDataFormat();
            }

            @Override
            public String text(int style) {
                return styles.getStyleAt(style).getDataFormatString();
            }

            @Override
            public boolean from1904() {
                return contents.from1904();
            }
        };
    }

    private static void parse(InputStream xml, DefaultHandler handler)
            throws IOException, SAXException, ParserConfigurationException {
        var reader = XMLHelper.newXMLReader();
        reader.setContentHandler(handler);
        reader.parse(new InputSource(xml));
    }

    private static UnreadableRows unreadable(String file, Exception cause) {
        boolean bomb = String.valueOf(cause.getMessage()).contains("Zip bomb");
        return new UnreadableRows(
                Span.startOf(file),
                bomb
                        ? "this workbook unpacks into far more than its size"
                        : "this file is not a whole workbook of the kind .xlsx",
                "open it in a spreadsheet program and save it anew, without a password",
                cause);
    }

    @Override
    public void close() {
        archive.revert();
    }

    /** Ends the reading of a sheet before its end. */
    static final class Enough extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Enough() {
            super("enough", null, false, false);
        }
    }
}
