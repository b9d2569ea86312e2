package comparand.write.docx;

import comparand.document.Edition;
import comparand.document.Look;
import java.math.BigInteger;
import java.util.EnumMap;
import java.util.Map;
import javax.xml.namespace.QName;
import org.apache.poi.xwpf.model.XWPFHeaderFooterPolicy;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFHeaderFooter;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTPageMar;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTSectPr;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTTabStop;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STHdrFtr;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STPageOrientation;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STTabJc;

/** The pages of a text: their size, which of them lie, heads and feet. Lengths are twentieths of a point. */
final class Pages {

    /** 25 mm. */
    private static final int MARGIN = 1417;

    private static final String WORDS = "http://schemas.openxmlformats.org/wordprocessingml/2006/main";
    private static final int TO_HEAD = 709;
    /** Characters of a head beside each other, at most. */
    private static final int MOST_STANDING = 88;

    private static final int MOST_LYING = 140;

    private final XWPFDocument file;
    private final Look look;
    private final Edition edition;
    private final int narrow;
    private final int wide;
    private final Map<Way, CTSectPr> first = new EnumMap<>(Way.class);
    private Way way = Way.STANDING;
    private boolean used;

    private enum Way {
        STANDING,
        LYING
    }

    Pages(XWPFDocument file, Look look, Edition edition) {
        this.file = file;
        this.look = look;
        this.edition = edition;
        this.narrow = look.paper() == Look.Paper.A4 ? 11906 : 12240;
        this.wide = look.paper() == Look.Paper.A4 ? 16838 : 15840;
    }

    /** The width of the text on the page at hand. */
    int width() {
        return width(way);
    }

    private int width(Way of) {
        return (of == Way.LYING ? wide : narrow) - 2 * MARGIN;
    }

    /** Whether nothing was set since the last turn of the paper. */
    boolean isFresh() {
        return !used;
    }

    /** Something was set on the page at hand. */
    void used() {
        used = true;
    }

    /** What comes is set on lying, or standing, pages. */
    void lie(boolean lying) {
        var wanted = lying ? Way.LYING : Way.STANDING;
        if (wanted != way) {
            if (used) {
                var last = file.getLastParagraph();
                var properties = last.getCTP().isSetPPr()
                        ? last.getCTP().getPPr()
                        : last.getCTP().addNewPPr();
                stretch(properties.addNewSectPr());
            }
            way = wanted;
            used = false;
        }
    }

    /** Everything is set. */
    void end() {
        var body = file.getDocument().getBody();
        stretch(body.isSetSectPr() ? body.getSectPr() : body.addNewSectPr());
    }

    private void stretch(CTSectPr stretch) {
        headAndFoot(stretch);
        var size = stretch.addNewPgSz();
        size.setW(BigInteger.valueOf(way == Way.LYING ? wide : narrow));
        size.setH(BigInteger.valueOf(way == Way.LYING ? narrow : wide));
        if (way == Way.LYING) {
            size.setOrient(STPageOrientation.LANDSCAPE);
        }
        var margins = stretch.addNewPgMar();
        margins.setTop(BigInteger.valueOf(MARGIN));
        margins.setBottom(BigInteger.valueOf(MARGIN));
        margins.setLeft(BigInteger.valueOf(MARGIN));
        margins.setRight(BigInteger.valueOf(MARGIN));
        margins.setHeader(BigInteger.valueOf(TO_HEAD));
        margins.setFooter(BigInteger.valueOf(TO_HEAD));
        margins.setGutter(BigInteger.ZERO);
        if (look.lineNumbers()) {
            numberLines(margins);
        }
    }

    /** Element by element: the small set of schema classes that the library comes with has none for numbers of lines. */
    private static void numberLines(CTPageMar margins) {
        try (var cursor = margins.newCursor()) {
            cursor.toEndToken();
            cursor.toNextToken();
            cursor.beginElement(new QName(WORDS, "lnNumType", "w"));
            cursor.insertAttributeWithValue(new QName(WORDS, "countBy", "w"), "1");
            cursor.insertAttributeWithValue(new QName(WORDS, "restart", "w"), "continuous");
        }
    }

    /** Pages that lie have heads of their own, since these are as wide as the text. */
    private void headAndFoot(CTSectPr stretch) {
        var same = first.get(way);
        if (same != null) {
            stretch.addNewHeaderReference().set(same.getHeaderReferenceArray(0));
            stretch.addNewFooterReference().set(same.getFooterReferenceArray(0));
            return;
        }
        first.put(way, stretch);
        var policy = new XWPFHeaderFooterPolicy(file, stretch);
        head(policy.createHeader(STHdrFtr.DEFAULT));
        foot(policy.createFooter(STHdrFtr.DEFAULT));
    }

    private void head(XWPFHeaderFooter head) {
        int most = (way == Way.LYING ? MOST_LYING : MOST_STANDING)
                - edition.state().length();
        line(head, "Header", shortened(edition.title(), most), edition.state());
        for (var mark : edition.marks()) {
            var paragraph = head.createParagraph();
            paragraph.setStyle("Header");
            RunningText.run(paragraph, mark);
        }
    }

    private static String shortened(String title, int most) {
        return title.length() <= most ? title : title.substring(0, Math.max(0, most - 1)) + "\u2026";
    }

    private void foot(XWPFHeaderFooter foot) {
        var left = look.house().isEmpty() ? edition.imprint(" · ") : look.house() + " · " + edition.imprint(" · ");
        var paragraph = line(foot, "Footer", left, "");
        field(paragraph, "PAGE");
        RunningText.run(paragraph, " / ");
        field(paragraph, "NUMPAGES");
    }

    private XWPFParagraph line(XWPFHeaderFooter into, String style, String left, String right) {
        var paragraph = into.getParagraphs().isEmpty()
                ? into.createParagraph()
                : into.getParagraphs().get(0);
        paragraph.setStyle(style);
        CTTabStop tab = paragraph.getCTP().getPPr().addNewTabs().addNewTab();
        tab.setVal(STTabJc.RIGHT);
        tab.setPos(BigInteger.valueOf(width()));
        RunningText.run(paragraph, left + "\t" + right);
        return paragraph;
    }

    /** The number shown is put right by whoever opens the file: pages are not known before. */
    private static void field(XWPFParagraph paragraph, String code) {
        var field = paragraph.getCTP().addNewFldSimple();
        field.setInstr(" " + code + " ");
        field.addNewR().addNewT().setStringValue("1");
    }
}
