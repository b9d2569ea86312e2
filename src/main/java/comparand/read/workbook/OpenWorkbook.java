package comparand.read.workbook;

import comparand.diag.Span;
import comparand.model.UnreadableRows;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * A workbook while it is read. The office library's limits against archives that unpack into more than they should stay as
 * they are, {@link GuardedArchive} adds to them, and the library's XML parser refuses declarations of document types and so
 * resolves nothing that lies outside of the file. Links to other workbooks are not followed.
 */
final class OpenWorkbook implements Closeable {

    private final String file;
    private final GuardedArchive guard;
    private final OPCPackage archive;
    private final XSSFReader parts;
    private final WorkbookXml contents = new WorkbookXml();
    private Optional<ReadOnlySharedStringsTable> texts = Optional.empty();
    private Optional<StylesTable> styles = Optional.empty();

    private OpenWorkbook(String file, GuardedArchive guard, OPCPackage archive, XSSFReader parts) {
        this.file = file;
        this.guard = guard;
        this.archive = archive;
        this.parts = parts;
    }

    /**
     * Opens a workbook for reading.
     *
     * @throws UnreadableRows if it is none
     */
    static OpenWorkbook open(Path path, String file) {
        GuardedArchive guard;
        try {
            guard = GuardedArchive.open(path.toFile(), file);
        } catch (IOException e) {
            throw unreadable(file, Optional.empty(), e);
        }
        try {
            var archive = OPCPackage.open(guard);
            var workbook = new OpenWorkbook(file, guard, archive, new XSSFReader(archive));
            try (var xml = workbook.parts.getWorkbookData()) {
                parse(xml, workbook.contents);
            }
            return workbook;
        } catch (UnreadableRows e) {
            closed(guard);
            throw e;
        } catch (IOException | OpenXML4JException | SAXException | ParserConfigurationException | RuntimeException e) {
            // the office library tells of broken files by many kinds of exceptions
            closed(guard);
            throw unreadable(file, guard.refusal(), e);
        }
    }

    private static void closed(GuardedArchive guard) {
        try {
            guard.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
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
        prepare();
        guard.allow(GuardedArchive.ANY);
        try (var xml = part(sheet)) {
            var shared = texts.orElseThrow();
            parse(
                    xml,
                    new SheetXml(
                            visitor,
                            formats(styles.orElseThrow()),
                            i -> shared.getItemAt(i).getString()));
        } catch (Enough e) {
            // the visitor has seen what it came for
        } catch (IOException | OpenXML4JException | SAXException | ParserConfigurationException e) {
            throw unreadable(file, guard.refusal(), e);
        }
    }

    /** Texts and styles are the same for all sheets. */
    private void prepare() {
        if (styles.isPresent()) {
            return;
        }
        try {
            guard.allow(GuardedArchive.LARGEST_TEXTS);
            texts = Optional.of(new ReadOnlySharedStringsTable(archive, false));
            guard.allow(GuardedArchive.LARGEST_TREE);
            styles = Optional.of(parts.getStylesTable());
        } catch (IOException | OpenXML4JException | SAXException | RuntimeException e) {
            throw unreadable(file, guard.refusal(), e);
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
                return style(style).getDataFormat();
            }

            @Override
            public String text(int style) {
                return String.valueOf(style(style).getDataFormatString());
            }

            private XSSFCellStyle style(int number) {
                if (number < 0 || number >= styles.getNumCellStyles()) {
                    throw new IllegalArgumentException("the workbook has no style of this number");
                }
                return styles.getStyleAt(number);
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

    private static UnreadableRows unreadable(String file, Optional<UnreadableRows> refusal, Exception cause) {
        var said = String.valueOf(cause.getMessage());
        return refusal.orElseGet(() -> new UnreadableRows(
                Span.startOf(file),
                said.contains("Zip bomb")
                        ? "this workbook unpacks into far more than its size"
                        : said.contains("DOCTYPE")
                                ? "a part of this workbook declares a type of document, which no spreadsheet program does"
                                : "this file is not a whole workbook of the kind .xlsx",
                "open it in a spreadsheet program and save it anew, without a password",
                cause));
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
