package comparand.write.pdf;

import comparand.document.Edition;
import java.io.ByteArrayOutputStream;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * The metadata packet of a PDF, where archives and readers that read aloud look for title and author: XMP (ISO 16684-1)
 * with the Dublin Core and PDF schemas, and the parts of PDF/A (ISO 19005-2) and PDF/UA (ISO 14289-1) the file keeps.
 */
final class Xmp {

    private static final String X = "adobe:ns:meta/";
    private static final String RDF = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";
    private static final String DC = "http://purl.org/dc/elements/1.1/";
    private static final String XMP = "http://ns.adobe.com/xap/1.0/";
    private static final String PDF = "http://ns.adobe.com/pdf/1.3/";
    private static final String ARCHIVE = "http://www.aiim.org/pdfa/ns/id/";
    private static final String ACCESS = "http://www.aiim.org/pdfua/ns/id/";
    private static final String EXTENSION = "http://www.aiim.org/pdfa/ns/extension/";
    private static final String SCHEMA = "http://www.aiim.org/pdfa/ns/schema#";
    private static final String PROPERTY = "http://www.aiim.org/pdfa/ns/property#";

    private final XMLStreamWriter xml;

    private Xmp(XMLStreamWriter xml) {
        this.xml = xml;
    }

    static byte[] of(Edition edition) {
        var bytes = new ByteArrayOutputStream();
        try {
            var xml = XMLOutputFactory.newFactory().createXMLStreamWriter(bytes, "UTF-8");
            new Xmp(xml).packet(edition);
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("an XML writer in memory does not fail", e);
        }
        return bytes.toByteArray();
    }

    /** What a search should find the file by. */
    static String keywords(Edition edition) {
        return Stream.concat(Stream.of(edition.fingerprint()), edition.marks().stream())
                .collect(Collectors.joining(" "));
    }

    private void packet(Edition edition) throws XMLStreamException {
        xml.writeProcessingInstruction("xpacket", "begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"");
        xml.writeStartElement("x", "xmpmeta", X);
        xml.writeNamespace("x", X);
        xml.writeStartElement("rdf", "RDF", RDF);
        xml.writeNamespace("rdf", RDF);
        description("dc", DC, "xmp", XMP, "pdf", PDF, "pdfaid", ARCHIVE, "pdfuaid", ACCESS);
        listed("title", "Alt", edition.title());
        listed("creator", "Seq", edition.preparedBy());
        listed("description", "Alt", edition.subtitle());
        listed("language", "Bag", edition.language());
        text("xmp", XMP, "CreateDate", edition.date() + "T00:00:00Z");
        text("xmp", XMP, "ModifyDate", edition.date() + "T00:00:00Z");
        text("xmp", XMP, "CreatorTool", edition.tool());
        text("pdf", PDF, "Keywords", keywords(edition));
        text("pdfaid", ARCHIVE, "part", "2");
        text("pdfaid", ARCHIVE, "conformance", "A");
        text("pdfuaid", ACCESS, "part", "1");
        xml.writeEndElement();
        accessSchema();
        xml.writeEndElement();
        xml.writeEndElement();
        xml.writeProcessingInstruction("xpacket", "end=\"w\"");
    }

    /** Archives know no schema of PDF/UA: it has to be described to them. */
    private void accessSchema() throws XMLStreamException {
        description("pdfaExtension", EXTENSION, "pdfaSchema", SCHEMA, "pdfaProperty", PROPERTY);
        xml.writeStartElement("pdfaExtension", "schemas", EXTENSION);
        resource("Bag");
        text("pdfaSchema", SCHEMA, "schema", "PDF/UA identification schema");
        text("pdfaSchema", SCHEMA, "namespaceURI", ACCESS);
        text("pdfaSchema", SCHEMA, "prefix", "pdfuaid");
        xml.writeStartElement("pdfaSchema", "property", SCHEMA);
        resource("Seq");
        text("pdfaProperty", PROPERTY, "name", "part");
        text("pdfaProperty", PROPERTY, "valueType", "Integer");
        text("pdfaProperty", PROPERTY, "category", "internal");
        text("pdfaProperty", PROPERTY, "description", "The part of ISO 14289 the file keeps");
        for (int open = 0; open < 7; open++) {
            xml.writeEndElement();
        }
    }

    private void description(String... prefixesAndNames) throws XMLStreamException {
        xml.writeStartElement("rdf", "Description", RDF);
        xml.writeAttribute("rdf", RDF, "about", "");
        for (int i = 0; i < prefixesAndNames.length; i += 2) {
            xml.writeNamespace(prefixesAndNames[i], prefixesAndNames[i + 1]);
        }
    }

    /** Opens a list whose one item has properties. */
    private void resource(String list) throws XMLStreamException {
        xml.writeStartElement("rdf", list, RDF);
        xml.writeStartElement("rdf", "li", RDF);
        xml.writeAttribute("rdf", RDF, "parseType", "Resource");
    }

    /** A property of the Dublin Core, whose values stand in a list of one. */
    private void listed(String name, String list, String value) throws XMLStreamException {
        xml.writeStartElement("dc", name, DC);
        xml.writeStartElement("rdf", list, RDF);
        xml.writeStartElement("rdf", "li", RDF);
        if (list.equals("Alt")) {
            xml.writeAttribute("xml", "http://www.w3.org/XML/1998/namespace", "lang", "x-default");
        }
        xml.writeCharacters(value);
        xml.writeEndElement();
        xml.writeEndElement();
        xml.writeEndElement();
    }

    private void text(String prefix, String space, String name, String value) throws XMLStreamException {
        xml.writeStartElement(prefix, name, space);
        xml.writeCharacters(value);
        xml.writeEndElement();
    }
}
