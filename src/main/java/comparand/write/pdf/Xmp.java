package comparand.write.pdf;

import comparand.document.Edition;
import java.io.ByteArrayOutputStream;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * The metadata packet of a PDF, where archives and readers that read aloud look for title and author: XMP (ISO 16684-1)
 * with the Dublin Core and PDF schemas.
 */
final class Xmp {

    private static final String X = "adobe:ns:meta/";
    private static final String RDF = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";
    private static final String DC = "http://purl.org/dc/elements/1.1/";
    private static final String XMP = "http://ns.adobe.com/xap/1.0/";

    private Xmp() {}

    static byte[] of(Edition edition) {
        var bytes = new ByteArrayOutputStream();
        try {
            var xml = XMLOutputFactory.newFactory().createXMLStreamWriter(bytes, "UTF-8");
            xml.writeProcessingInstruction("xpacket", "begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"");
            start(xml, "x", "xmpmeta", X);
            start(xml, "rdf", "RDF", RDF);
            start(xml, "rdf", "Description", RDF);
            xml.writeAttribute("rdf", RDF, "about", "");
            xml.writeNamespace("dc", DC);
            xml.writeNamespace("xmp", XMP);
            listed(xml, "title", "Alt", edition.title());
            listed(xml, "creator", "Seq", edition.preparedBy());
            listed(xml, "description", "Alt", edition.subtitle());
            listed(xml, "language", "Bag", edition.language());
            text(xml, "CreateDate", edition.date() + "T00:00:00Z");
            text(xml, "ModifyDate", edition.date() + "T00:00:00Z");
            text(xml, "CreatorTool", edition.tool());
            xml.writeEndElement();
            xml.writeEndElement();
            xml.writeEndElement();
            xml.writeProcessingInstruction("xpacket", "end=\"w\"");
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("an XML writer in memory does not fail", e);
        }
        return bytes.toByteArray();
    }

    private static void start(XMLStreamWriter xml, String prefix, String name, String space) throws XMLStreamException {
        xml.writeStartElement(prefix, name, space);
        if (!(prefix.equals("rdf") && name.equals("Description"))) {
            xml.writeNamespace(prefix, space);
        }
    }

    /** A property of the Dublin Core, whose values stand in a list of one. */
    private static void listed(XMLStreamWriter xml, String name, String list, String value) throws XMLStreamException {
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

    private static void text(XMLStreamWriter xml, String name, String value) throws XMLStreamException {
        xml.writeStartElement("xmp", name, XMP);
        xml.writeCharacters(value);
        xml.writeEndElement();
    }
}
