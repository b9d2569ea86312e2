package comparand.write.pdf;

import com.lowagie.text.PageSize;
import com.lowagie.text.Rectangle;
import comparand.document.Document;
import comparand.document.Look;

/**
 * The paper and what is left free on it, in points.
 *
 * @param top from the upper edge to the first line, with the running head between
 * @param bottom from the lower edge to the last line, with the running foot between
 */
record Sheet(Rectangle size, float margin, float top, float bottom, boolean compact) {

    static Sheet of(Document document) {
        var paper = document.look().paper() == Look.Paper.A4 ? PageSize.A4 : PageSize.LETTER;
        boolean standing = document.form() == Document.Form.PAGES;
        return standing ? new Sheet(paper, 32, 38, 30, true) : new Sheet(paper.rotate(), 36, 44, 40, false);
    }
}
