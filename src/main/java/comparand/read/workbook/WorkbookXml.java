package comparand.read.workbook;

import java.util.ArrayList;
import java.util.List;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Follows the XML of a workbook's first part (ECMA-376 part 1, 18.2): its sheets, and the day its dates count from. */
final class WorkbookXml extends DefaultHandler {

    /**
     * A sheet as the workbook lists it.
     *
     * @param part the id of the relationship that leads to its XML
     */
    record Sheet(String name, String part, boolean hidden) {}

    /** As many as spreadsheet programs offer at most when they make a workbook. */
    private static final int MOST_SHEETS = 255;

    private final List<Sheet> sheets = new ArrayList<>();
    private boolean from1904;

    @Override
    public void startElement(String uri, String name, String qualified, Attributes attributes) throws SAXException {
        if (name.equals("sheet")) {
            var state = attributes.getValue("state");
            var called = attributes.getValue("name");
            var part = part(attributes);
            if (called == null || called.isBlank() || sheets.size() == MOST_SHEETS) {
                throw new SAXException("a sheet has no name, or there are too many");
            }
            if (sheets.stream().anyMatch(s -> s.part().equals(part) || s.name().equals(called))) {
                throw new SAXException("two sheets are one");
            }
            sheets.add(new Sheet(called, part, state != null && !state.equals("visible")));
        } else if (name.equals("workbookPr")) {
            var flag = attributes.getValue("date1904");
            from1904 = "1".equals(flag) || "true".equals(flag);
        }
    }

    /** The one attribute in the namespace of relationships, of which there are two spellings. */
    private static String part(Attributes attributes) {
        for (int i = 0; i < attributes.getLength(); i++) {
            if (attributes.getLocalName(i).equals("id") && attributes.getURI(i).endsWith("relationships")) {
                return attributes.getValue(i);
            }
        }
        return "";
    }

    List<Sheet> sheets() {
        return sheets;
    }

    boolean from1904() {
        return from1904;
    }
}
