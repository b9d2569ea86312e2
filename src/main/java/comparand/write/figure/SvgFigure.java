package comparand.write.figure;

import comparand.document.chart.Chart;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes a figure as SVG 1.1, a file of its own or a part of a page: text stays text, and nothing from elsewhere is needed to show it. */
public final class SvgFigure {

    private static final String SVG = "http://www.w3.org/2000/svg";

    private SvgFigure() {}

    /**
     * Writes a drawing of a chart; message and alternative become its title and description.
     *
     * @param language BCP 47
     */
    public static void write(Chart chart, Drawing drawing, Faces faces, String language, OutputStream out)
            throws IOException {
        try {
            var xml = XMLOutputFactory.newFactory().createXMLStreamWriter(out, StandardCharsets.UTF_8.name());
            xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
            xml.writeStartElement("svg");
            xml.writeDefaultNamespace(SVG);
            xml.writeAttribute("version", "1.1");
            xml.writeAttribute("width", number(drawing.width() / PrintWidth.POINTS_PER_MM) + "mm");
            xml.writeAttribute("height", number(drawing.height() / PrintWidth.POINTS_PER_MM) + "mm");
            xml.writeAttribute("viewBox", "0 0 " + number(drawing.width()) + " " + number(drawing.height()));
            xml.writeAttribute("xml:lang", language);
            xml.writeAttribute("font-family", "'" + faces.family() + "', 'Source Sans 3', sans-serif");
            described(xml, chart, chart.id());
            ground(xml, drawing);
            drawing.paint(new Sheet(xml));
            xml.writeEndElement();
            xml.writeCharacters("\n");
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException e) {
            throw new IOException("the figure " + chart.id() + " could not be written", e);
        }
    }

    /**
     * A drawing of a chart as an element to stand within a page: without ground, size and face of its own, for the style sheet
     * of the page gives them.
     *
     * @param id unique in the page
     * @param form what the style sheet knows it by
     */
    public static String within(Chart chart, Drawing drawing, String id, String form) {
        var out = new StringWriter();
        try {
            var xml = XMLOutputFactory.newFactory().createXMLStreamWriter(out);
            xml.writeStartElement("svg");
            xml.writeAttribute("class", form);
            xml.writeAttribute("id", id);
            xml.writeAttribute("viewBox", "0 0 " + number(drawing.width()) + " " + number(drawing.height()));
            xml.writeAttribute("preserveAspectRatio", "xMinYMin");
            described(xml, chart, id);
            drawing.paint(new Sheet(xml));
            xml.writeEndElement();
            xml.close();
            return out.toString();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("the figure " + chart.id() + " could not be written", e);
        }
    }

    private static void described(XMLStreamWriter xml, Chart chart, String id) throws XMLStreamException {
        xml.writeAttribute("role", "img");
        xml.writeAttribute("aria-labelledby", id + "-title " + id + "-desc");
        said(xml, "title", id + "-title", chart.message());
        said(xml, "desc", id + "-desc", chart.alternative());
    }

    private static void said(XMLStreamWriter xml, String name, String id, String text) throws XMLStreamException {
        xml.writeCharacters("\n");
        xml.writeStartElement(name);
        xml.writeAttribute("id", id);
        xml.writeCharacters(text);
        xml.writeEndElement();
    }

    private static void ground(XMLStreamWriter xml, Drawing drawing) throws XMLStreamException {
        xml.writeCharacters("\n");
        xml.writeEmptyElement("rect");
        xml.writeAttribute("width", number(drawing.width()));
        xml.writeAttribute("height", number(drawing.height()));
        xml.writeAttribute("fill", "#FFFFFF");
    }

    /** To a hundredth of a point, without idle zeros. */
    private static String number(double value) {
        long hundredths = Math.round(value * 100);
        long size = Math.abs(hundredths);
        var fraction = size % 100 == 0
                ? ""
                : size % 10 == 0 ? "." + size % 100 / 10 : "." + (size % 100 < 10 ? "0" : "") + size % 100;
        return (hundredths < 0 ? "-" : "") + size / 100 + fraction;
    }

    private static String colour(int rgb) {
        return String.format(Locale.ROOT, "#%06X", rgb);
    }

    private static String pairs(List<Spot> spots) {
        return spots.stream().map(s -> number(s.x()) + "," + number(s.y())).collect(Collectors.joining(" "));
    }

    /** A write to a stream in memory or a file that failed. */
    private static final class Failed extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Failed(XMLStreamException cause) {
            super(cause);
        }
    }

    /** One element for each shape. */
    private static final class Sheet implements Surface {

        private final XMLStreamWriter xml;

        Sheet(XMLStreamWriter xml) {
            this.xml = xml;
        }

        @Override
        public void line(List<Spot> through, Pen pen) {
            element("polyline", () -> {
                xml.writeAttribute("points", pairs(through));
                xml.writeAttribute("fill", "none");
                pen(pen);
            });
        }

        @Override
        public void polygon(List<Spot> corners, Paint paint) {
            element("polygon", () -> {
                xml.writeAttribute("points", pairs(corners));
                paint(paint);
            });
        }

        @Override
        public void circle(Spot centre, double radius, Paint paint) {
            element("circle", () -> {
                xml.writeAttribute("cx", number(centre.x()));
                xml.writeAttribute("cy", number(centre.y()));
                xml.writeAttribute("r", number(radius));
                paint(paint);
            });
        }

        @Override
        public void text(Lettering lettering) {
            try {
                xml.writeCharacters("\n");
                xml.writeStartElement("text");
                xml.writeAttribute("x", number(lettering.at().x()));
                xml.writeAttribute("y", number(lettering.at().y()));
                xml.writeAttribute("font-size", number(lettering.size()));
                if (lettering.anchor() != Lettering.Anchor.START) {
                    xml.writeAttribute("text-anchor", lettering.anchor().name().toLowerCase(Locale.ROOT));
                }
                if (lettering.strong()) {
                    xml.writeAttribute("font-weight", "600");
                }
                xml.writeAttribute("fill", colour(lettering.rgb()));
                xml.writeCharacters(lettering.text());
                xml.writeEndElement();
            } catch (XMLStreamException e) {
                throw new Failed(e);
            }
        }

        private void pen(Pen pen) throws XMLStreamException {
            xml.writeAttribute("stroke", colour(pen.rgb()));
            xml.writeAttribute("stroke-width", number(pen.width()));
            if (!pen.dashes().isEmpty()) {
                xml.writeAttribute(
                        "stroke-dasharray",
                        pen.dashes().stream().map(SvgFigure::number).collect(Collectors.joining(" ")));
            }
        }

        private void paint(Paint paint) throws XMLStreamException {
            xml.writeAttribute("fill", paint.fill().map(SvgFigure::colour).orElse("none"));
            if (paint.outline().isPresent()) {
                pen(paint.outline().get());
            }
        }

        /** Attributes of an element. */
        private interface Attributes {
            void write() throws XMLStreamException;
        }

        private void element(String name, Attributes attributes) {
            try {
                xml.writeCharacters("\n");
                xml.writeEmptyElement(name);
                attributes.write();
            } catch (XMLStreamException e) {
                throw new Failed(e);
            }
        }
    }
}
