package comparand.read.workbook;

import comparand.model.DataCell;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Follows the XML of one sheet (ECMA-376 part 1, 18.3.1: {@code row}, {@code c}, {@code v}, {@code f}, {@code is}) and tells a
 * visitor of each cell.
 */
final class SheetXml extends DefaultHandler {

    /** The largest sheet there is: 1 048 576 rows of 16 384 columns (ECMA-376 part 1, 18.18.62, as programs keep to it). */
    private static final int MOST_ROWS = 1 << 20;

    private static final int MOST_COLUMNS = 1 << 14;
    /** The letters of the last column, XFD. */
    private static final int LONGEST_COLUMN = 3;
    /** The longest text a spreadsheet program stores in a cell has 32 767 signs. */
    private static final int LONGEST_CELL = 32_767;
    /** Every one of them is kept, and each in the table is a fault. */
    private static final int MOST_MERGED = 65_536;

    private final SheetVisitor visitor;
    private final Formats formats;
    private final Texts texts;
    private final StringBuilder value = new StringBuilder();
    private int row = -1;
    private int column = -1;
    private boolean hidden;
    private String type = "n";
    private int style;
    private boolean formula;
    private boolean hasValue;
    private boolean inValue;
    private boolean inPhonetic;
    private int rows;
    private int cellsInRow;
    private int merged;

    /** The texts that sheets share, by their number. */
    interface Texts {
        String get(int index);
    }

    /** The number format of a style, and whether the workbook counts days from 1904. */
    interface Formats {
        int id(int style);

        String text(int style);

        boolean from1904();
    }

    SheetXml(SheetVisitor visitor, Formats formats, Texts texts) {
        this.visitor = visitor;
        this.formats = formats;
        this.texts = texts;
    }

    @Override
    public void startElement(String uri, String name, String qualified, Attributes attributes) throws SAXException {
        try {
            start(name, attributes);
        } catch (IllegalArgumentException e) {
            throw new SAXException("an attribute of <" + name + "> is no number or cell", e);
        }
    }

    private void start(String name, Attributes attributes) throws SAXException {
        switch (name) {
            case "row" -> {
                var number = attributes.getValue("r");
                row = number == null ? row + 1 : Integer.parseInt(number) - 1;
                within(row, MOST_ROWS, "row");
                within(rows++, MOST_ROWS, "rows");
                cellsInRow = 0;
                hidden = isTrue(attributes.getValue("hidden"));
                column = -1;
            }
            case "c" -> startCell(attributes);
            case "f" -> formula = true;
            case "v", "t" -> {
                inValue = !inPhonetic;
                hasValue |= inValue;
            }
            case "rPh" -> inPhonetic = true;
            case "col" -> {
                if (isTrue(attributes.getValue("hidden"))) {
                    visitor.hiddenColumns(
                            Integer.parseInt(attributes.getValue("min")) - 1,
                            Integer.parseInt(attributes.getValue("max")) - 1);
                }
            }
            case "mergeCell" -> {
                within(merged++, MOST_MERGED, "merged ranges");
                visitor.merged(range(attributes.getValue("ref")));
            }
            default -> {
                // formats, filters, print set-up: not data
            }
        }
    }

    private static CellRangeAddress range(String reference) throws SAXException {
        if (reference == null) {
            throw new SAXException("a merged range says not which");
        }
        var range = CellRangeAddress.valueOf(reference);
        within(range.getFirstRow(), MOST_ROWS, "row");
        within(range.getLastRow(), MOST_ROWS, "row");
        return range;
    }

    /** Refuses what no sheet has, before memory is kept for it. */
    private static void within(int number, int most, String what) throws SAXException {
        if (number < 0 || number >= most) {
            throw new SAXException("no sheet has so many of these: " + what);
        }
    }

    private void startCell(Attributes attributes) throws SAXException {
        var reference = attributes.getValue("r");
        column = reference == null ? column + 1 : column(reference);
        within(row, MOST_ROWS, "row");
        within(column, MOST_COLUMNS, "column");
        within(cellsInRow++, MOST_COLUMNS, "cells in a row");
        var stated = attributes.getValue("t");
        type = stated == null ? "n" : stated;
        var number = attributes.getValue("s");
        style = number == null ? 0 : Integer.parseInt(number);
        formula = false;
        hasValue = false;
        value.setLength(0);
    }

    /** The letters of a reference such as {@code F17}, without building objects for every cell. */
    private static int column(String reference) {
        int letters = 0;
        while (letters < reference.length() && Character.isLetter(reference.charAt(letters))) {
            letters++;
        }
        if (letters == 0 || letters > LONGEST_COLUMN) {
            throw new IllegalArgumentException(reference + " is no cell");
        }
        return CellReference.convertColStringToIndex(reference.substring(0, letters));
    }

    private static boolean isTrue(String attribute) {
        return "1".equals(attribute) || "true".equals(attribute);
    }

    @Override
    public void characters(char[] signs, int start, int length) throws SAXException {
        if (inValue) {
            within(value.length() + length - 1, LONGEST_CELL, "signs in a cell");
            value.append(signs, start, length);
        }
    }

    @Override
    public void endElement(String uri, String name, String qualified) throws SAXException {
        switch (name) {
            case "v", "t" -> inValue = false;
            case "rPh" -> inPhonetic = false;
            case "c" -> endCell();
            case "row" -> visitor.rowEnds(row, hidden);
            default -> {
                // see startElement
            }
        }
    }

    private void endCell() throws SAXException {
        if (formula && !hasValue && !type.equals("str")) {
            visitor.cell(row, column, DataCell.blank(), SheetVisitor.Source.FORMULA_WITHOUT_RESULT);
        } else if (hasValue) {
            var content = content(value.toString());
            if (!content.isBlank()) {
                visitor.cell(row, column, content, formula ? SheetVisitor.Source.FORMULA : SheetVisitor.Source.TYPED);
            }
        }
    }

    /** Faults of the file only: what a visitor does with a cell has faults of its own. */
    private DataCell content(String stored) throws SAXException {
        try {
            return typed(stored);
        } catch (IllegalArgumentException | IndexOutOfBoundsException | IllegalStateException e) {
            throw new SAXException("a cell does not hold what its type says", e);
        }
    }

    private DataCell typed(String stored) {
        return switch (type) {
            case "s" -> DataCell.of(shared(stored));
            case "str", "inlineStr" -> DataCell.of(stored);
            case "b" -> DataCell.of(stored.strip().equals("1") ? "TRUE" : "FALSE");
            case "e" -> new DataCell.Fault(stored.strip());
            case "d" -> DataCell.of(stored);
            default -> number(stored.strip());
        };
    }

    private String shared(String number) {
        var text = texts.get(Integer.parseInt(number.strip()));
        if (text.length() > LONGEST_CELL) {
            throw new IllegalArgumentException("no cell holds so long a text");
        }
        return text;
    }

    private DataCell number(String stored) {
        if (stored.isEmpty()) {
            return DataCell.blank();
        }
        if (style > 0 && DateUtil.isADateFormat(formats.id(style), formats.text(style))) {
            return StoredDate.read(Double.parseDouble(stored), formats.from1904(), formats.text(style));
        }
        return new DataCell.Figure(StoredNumber.shortest(stored));
    }
}
