package comparand.write.figure;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.document.chart.Ink;
import comparand.document.chart.Plot;
import comparand.support.DemoCharts;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.xml.sax.SAXException;

/** The files of figures: SVG 1.1 and PNG (second edition, W3C 2003). */
class FigureFileTest {

    private static final Faces FACES = FigureLayoutTest.faces();

    static Stream<Plot> charts() {
        return DemoCharts.all().stream();
    }

    private static Drawing drawing(Plot chart, int millimetres) {
        return Drawing.of(chart, millimetres * FigureLayoutTest.POINTS_PER_MM, FACES);
    }

    private static byte[] svg(Plot chart) throws IOException {
        var out = new ByteArrayOutputStream();
        SvgFigure.write(chart, drawing(chart, 85), FACES, "en", out);
        return out.toByteArray();
    }

    private static byte[] png(Plot chart, int dpi) throws IOException {
        var out = new ByteArrayOutputStream();
        PngFigure.write(drawing(chart, 85), FACES, dpi, out);
        return out.toByteArray();
    }

    @ParameterizedTest
    @MethodSource("charts")
    @DisplayName("an SVG is well formed, names itself, describes itself, and refers to nothing outside")
    void svg11(Plot chart) throws IOException, ParserConfigurationException, SAXException {
        var bytes = svg(chart);
        var factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        var root = factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(bytes))
                .getDocumentElement();

        assertThat(root.getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
        assertThat(root.getAttribute("role")).isEqualTo("img");
        assertThat(root.getAttribute("width")).isEqualTo("85mm");
        assertThat(text(root, "title")).isEqualTo(chart.message());
        assertThat(text(root, "desc")).isEqualTo(chart.alternative());
        for (var id : root.getAttribute("aria-labelledby").split(" ", -1)) {
            assertThat(new String(bytes, StandardCharsets.UTF_8)).contains("id=\"" + id + "\"");
        }
        assertThat(new String(bytes, StandardCharsets.UTF_8).replace("http://www.w3.org/2000/svg", ""))
                .doesNotContain("href", "url(", "http", "<script", "<image", "@import");
    }

    private static String text(Element root, String name) {
        return root.getElementsByTagName(name).item(0).getTextContent();
    }

    @ParameterizedTest
    @ValueSource(ints = {300, 600})
    @DisplayName("a PNG has the pixels of its width in print, and says how many of them make a metre")
    void pngSaysItsSize(int dpi) throws IOException {
        var bytes = png(DemoCharts.all().get(0), dpi);
        var image = ImageIO.read(new ByteArrayInputStream(bytes));

        // 25.4 mm an inch
        assertThat(image.getWidth()).isEqualTo((int) Math.round(85 / 25.4 * dpi));
        // PNG 11.3.5.3: pHYs is two numbers of four bytes and 1 for metres
        var at = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("pHYs") + 4;
        var chunk = ByteBuffer.wrap(bytes, at, 9);
        assertThat(chunk.getInt()).isEqualTo((int) Math.round(dpi / 0.0254));
        assertThat(chunk.getInt()).isEqualTo((int) Math.round(dpi / 0.0254));
        assertThat(chunk.get()).isEqualTo((byte) 1);
    }

    @Test
    @DisplayName("the same figure gives the same bytes")
    void sameBytes() throws IOException {
        var chart = DemoCharts.all().get(0);

        assertThat(png(chart, 300)).isEqualTo(png(chart, 300));
        assertThat(svg(chart)).isEqualTo(svg(chart));
    }

    @Test
    @DisplayName("a PNG is neither blank nor black: it is mostly paper, and has ink")
    void notBlank() throws IOException {
        var image = ImageIO.read(new ByteArrayInputStream(png(DemoCharts.all().get(0), 300)));
        var colours = new HashSet<Integer>();
        int white = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                colours.add(image.getRGB(x, y));
                white += (image.getRGB(x, y) & 0xFFFFFF) == 0xFFFFFF ? 1 : 0;
            }
        }
        assertThat(colours).contains(0xFF000000 | Ink.INK.rgb());
        assertThat(white / (double) (image.getWidth() * image.getHeight())).isBetween(0.5, 0.98);
    }

    @ParameterizedTest
    @EnumSource(Ink.class)
    @DisplayName("each ink reads on white as text must: a contrast of 4.5 (WCAG 2.1, success criterion 1.4.3)")
    void contrast(Ink ink) {
        // WCAG 2.1: (L1 + 0.05) / (L2 + 0.05), white has L = 1
        double ratio = 1.05 / (luminance(ink.rgb()) + 0.05);

        assertThat(ratio).isGreaterThanOrEqualTo(4.5);
        // and stays dark where only grey is left of it
        assertThat(luminance(ink.rgb())).isLessThan(0.2);
    }

    /** Relative luminance, as WCAG 2.1 defines it for sRGB. */
    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
    }

    private static double linear(int channel) {
        double c = (channel & 0xFF) / 255.0;
        return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
