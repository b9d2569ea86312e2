import com.fasterxml.jackson.databind.JsonNode;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * A bill of materials in the XML of CycloneDX 1.6, from the same in JSON. The two forms differ in what are attributes, in
 * the order of elements (the schema of the XML fixes it), and in what elements of a list are called. A field it does not
 * know stops it, so that nothing is left out unseen.
 */
final class BillAsXml {

    private static final String SPACE = "http://cyclonedx.org/schema/bom/1.6";

    /** The elements of each list. */
    private static final Map<String, String> ONE_OF = Map.of(
            "components", "component",
            "hashes", "hash",
            "externalReferences", "reference",
            "properties", "property",
            "dependencies", "dependency",
            "lifecycles", "lifecycle");

    /** Fields of an object in the order of the schema. */
    private static final List<String> ORDER = List.of(
            "timestamp", "lifecycles", "tools", "author", "publisher", "group", "name", "version", "description", "scope",
            "hashes", "licenses", "copyright", "purl", "url", "comment", "externalReferences", "components", "component",
            "properties");

    private static final List<String> ATTRIBUTES = List.of("type", "bom-ref");

    private final XMLStreamWriter xml;

    private BillAsXml(XMLStreamWriter xml) {
        this.xml = xml;
    }

    static String of(JsonNode bill) throws XMLStreamException {
        var text = new StringWriter();
        var xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
        xml.writeStartDocument("UTF-8", "1.0");
        xml.writeCharacters("\n");
        xml.writeStartElement("bom");
        xml.writeDefaultNamespace(SPACE);
        xml.writeAttribute("version", bill.get("version").asText());
        var writer = new BillAsXml(xml);
        for (var part : List.of("metadata", "components", "dependencies")) {
            writer.field(part, bill.get(part), 1);
        }
        writer.line(0);
        xml.writeEndElement();
        xml.writeEndDocument();
        return text + "\n";
    }

    private void field(String name, JsonNode value, int depth) throws XMLStreamException {
        line(depth);
        xml.writeStartElement(name);
        if (value.isObject()) {
            object(value, depth);
        } else if (name.equals("licenses")) {
            for (var licence : value) {
                licence(licence, depth + 1);
            }
            line(depth);
        } else if (value.isArray()) {
            for (var each : value) {
                element(ONE_OF.get(name), each, depth + 1);
            }
            line(depth);
        } else {
            xml.writeCharacters(value.asText());
        }
        xml.writeEndElement();
    }

    private void object(JsonNode object, int depth) throws XMLStreamException {
        for (var attribute : ATTRIBUTES) {
            if (object.has(attribute)) {
                xml.writeAttribute(attribute, object.get(attribute).asText());
            }
        }
        object.fieldNames().forEachRemaining(f -> {
            if (!ORDER.contains(f) && !ATTRIBUTES.contains(f)) {
                throw new IllegalStateException("no place in the XML is known for " + f);
            }
        });
        for (var name : ORDER) {
            if (object.has(name)) {
                field(name, object.get(name), depth + 1);
            }
        }
        line(depth);
    }

    private void element(String name, JsonNode value, int depth) throws XMLStreamException {
        line(depth);
        xml.writeStartElement(name);
        switch (name) {
            case "hash" -> attributed("alg", value.get("alg"), value.get("content"));
            case "property" -> attributed("name", value.get("name"), value.get("value"));
            case "dependency" -> {
                xml.writeAttribute("ref", value.get("ref").asText());
                for (var on : value.path("dependsOn")) {
                    line(depth + 1);
                    xml.writeEmptyElement("dependency");
                    xml.writeAttribute("ref", on.asText());
                }
                line(depth);
            }
            case "lifecycle" -> {
                field("phase", value.get("phase"), depth + 1);
                line(depth);
            }
            default -> object(value, depth);
        }
        xml.writeEndElement();
    }

    private void licence(JsonNode licence, int depth) throws XMLStreamException {
        line(depth);
        if (licence.has("expression")) {
            xml.writeStartElement("expression");
            xml.writeCharacters(licence.get("expression").asText());
        } else {
            xml.writeStartElement("license");
            field("id", licence.get("license").get("id"), depth + 1);
            if (licence.get("license").has("url")) {
                field("url", licence.get("license").get("url"), depth + 1);
            }
            line(depth);
        }
        xml.writeEndElement();
    }

    private void attributed(String attribute, JsonNode name, JsonNode content) throws XMLStreamException {
        xml.writeAttribute(attribute, name.asText());
        xml.writeCharacters(content.asText());
    }

    private void line(int depth) throws XMLStreamException {
        xml.writeCharacters("\n" + "  ".repeat(depth));
    }
}
