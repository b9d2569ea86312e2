package comparand.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import comparand.support.OfficeSchemas;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionURI;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.jsoup.Jsoup;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.SAXException;

/** That nothing an author wrote does anything in a file of outputs: it is opened by another program's parser, and looked through. */
final class HarmlessFiles {

    private final String shown;

    /**
     * Looks through files.
     *
     * @param shown what must be found in them as text
     */
    HarmlessFiles(String shown) {
        this.shown = shown;
    }

    void look(Path file) throws IOException {
        var name = file.getFileName().toString();
        switch (name.substring(name.lastIndexOf('.') + 1)) {
            case "html" -> page(file);
            case "xlsx" -> {
                office(file);
                workbook(file);
            }
            case "docx", "pptx" -> office(file);
            case "svg" -> svg(file);
            case "pdf" -> pdf(file);
            case "json" ->
                assertThat(new ObjectMapper().readTree(file.toFile()).isObject())
                        .isTrue();
            case "txt" ->
                assertThat(Files.readString(file).codePoints().filter(HarmlessFiles::isControl))
                        .isEmpty();
            default -> assertThat(name).matches(".*\\.(png|sha256|built-from)");
        }
    }

    private static boolean isControl(int c) {
        return Character.isISOControl(c) && c != '\n' && c != '\r' && c != '\t';
    }

    private void page(Path file) throws IOException {
        var html = Files.readString(file);
        var page = Jsoup.parse(html);
        assertThat(page.select("script")).hasSize(2);
        assertThat(page.select("iframe, object, embed, form, base, link:not([rel=icon]), img"))
                .isEmpty();
        for (var element : page.getAllElements()) {
            for (var attribute : element.attributes()) {
                var key = attribute.getKey().toLowerCase(Locale.ROOT);
                assertThat(key).doesNotStartWith("on").isNotEqualTo("style");
                if (List.of("href", "src", "xlink:href", "action", "data", "srcset")
                        .contains(key)) {
                    assertThat(attribute.getValue()).matches("#.*|data:,");
                }
            }
        }
        var data = page.select("script#exploration").get(0).data();
        assertThat(data).doesNotContain("<", "\u2028", "\u2029");
        assertThat(new ObjectMapper().readTree(data).isObject()).isTrue();
        assertThat(page.wholeText()).contains(shown);
        assertThat(html.codePoints().filter(HarmlessFiles::isControl)).isEmpty();
    }

    private static void office(Path file) throws IOException {
        assertThat(OfficeSchemas.faults(file)).isEmpty();
        try (var zip = new ZipFile(file.toFile())) {
            for (var entry : Collections.list(zip.entries())) {
                if (entry.getName().endsWith(".xml") || entry.getName().endsWith(".rels")) {
                    try (var part = zip.getInputStream(entry)) {
                        var xml = xml(part);
                        if (entry.getName().endsWith(".rels")) {
                            relationships(xml);
                        }
                    }
                }
            }
        }
    }

    /** What leads out of a file leads to an address of the web, and no relationship is of a kind that loads by itself. */
    private static void relationships(Document xml) {
        var all = xml.getElementsByTagNameNS("*", "Relationship");
        for (int i = 0; i < all.getLength(); i++) {
            var one = (Element) all.item(i);
            if (one.getAttribute("TargetMode").equals("External")) {
                assertThat(URI.create(one.getAttribute("Target")).getScheme()).isEqualTo("https");
                assertThat(one.getAttribute("Type")).endsWith("/hyperlink");
            }
        }
    }

    private void workbook(Path file) throws IOException {
        int found = 0;
        try (var book = WorkbookFactory.create(file.toFile(), null, true)) {
            for (var sheet : book) {
                for (var row : sheet) {
                    for (var cell : row) {
                        if (cell.getCellType() == CellType.FORMULA) {
                            assertThat(cell.getCellFormula()).doesNotContain("HYPERLINK", "script", "1+1");
                        } else if (cell.getCellType() == CellType.STRING) {
                            var text = cell.getStringCellValue();
                            found += text.contains(shown) ? 1 : 0;
                            assertThat(text.isEmpty()
                                            || "=+-@\t\r".indexOf(text.charAt(0)) < 0
                                            || cell.getCellStyle().getQuotePrefixed())
                                    .as(sheet.getSheetName() + "!" + cell.getAddress() + ": " + text)
                                    .isTrue();
                        }
                    }
                }
            }
        }
        assertThat(found).as("texts in " + file).isPositive();
    }

    private static void svg(Path file) throws IOException {
        try (var in = Files.newInputStream(file)) {
            var all = xml(in).getElementsByTagName("*");
            for (int i = 0; i < all.getLength(); i++) {
                var element = (Element) all.item(i);
                assertThat(element.getLocalName()).isNotIn("script", "foreignObject", "image", "a", "s", "b");
                for (int a = 0; a < element.getAttributes().getLength(); a++) {
                    assertThat(element.getAttributes().item(a).getNodeName().toLowerCase(Locale.ROOT))
                            .doesNotStartWith("on");
                }
            }
        }
    }

    /** Of a parser that takes no declaration of a document type, and no sign that XML forbids. */
    private static Document xml(InputStream in) throws IOException {
        try {
            var factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return factory.newDocumentBuilder().parse(new ByteArrayInputStream(in.readAllBytes()));
        } catch (ParserConfigurationException | SAXException e) {
            throw new AssertionError(e);
        }
    }

    private static void pdf(Path file) throws IOException {
        try (var pdf = Loader.loadPDF(file.toFile())) {
            var catalogue = pdf.getDocumentCatalog();
            assertThat(catalogue.getCOSObject().containsKey(COSName.AA)).isFalse();
            assertThat(catalogue.getCOSObject().getDictionaryObject(COSName.NAMES, COSName.NAMES))
                    .satisfies(n -> assertThat(String.valueOf(n)).doesNotContain("JavaScript"));
            for (var page : pdf.getPages()) {
                for (var annotation : page.getAnnotations()) {
                    if (annotation instanceof PDAnnotationLink link
                            && link.getAction() instanceof PDActionURI address) {
                        assertThat(address.getURI()).startsWith("https://");
                    }
                }
            }
            assertThat(new PDFTextStripper().getText(pdf)).isNotEmpty();
        }
    }
}
