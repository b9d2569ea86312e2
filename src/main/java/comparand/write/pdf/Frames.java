package comparand.write.pdf;

import com.lowagie.text.pdf.PdfContentByte;
import comparand.document.Cell.Words.Frame;

/** Frames about the text of cells: told apart by their lines, so that they outlast a copying machine. */
final class Frames {

    /** From the edge of the cell to the frame. */
    private static final float INSET = 0.5f;

    private static final float APART = 1.2f;

    private Frames() {}

    /** Draws a frame into a cell of a width and height whose upper left corner is given. */
    static void draw(PdfContentByte canvas, Frame frame, float left, float top, float width, float height) {
        canvas.saveState();
        canvas.setColorStroke(TextStyle.INK);
        canvas.setLineWidth(0.7f);
        switch (frame) {
            case NONE -> {}
            case SOLID -> rectangle(canvas, left, top, width, height, INSET);
            case DOUBLE -> {
                canvas.setLineWidth(0.5f);
                rectangle(canvas, left, top, width, height, INSET);
                rectangle(canvas, left, top, width, height, INSET + APART);
            }
            case DASHED -> {
                canvas.setLineDash(3, 2, 0);
                rectangle(canvas, left, top, width, height, INSET);
            }
            case DOTTED -> {
                canvas.setLineDash(0.8f, 1.6f, 0);
                rectangle(canvas, left, top, width, height, INSET);
            }
        }
        canvas.restoreState();
    }

    private static void rectangle(
            PdfContentByte canvas, float left, float top, float width, float height, float inset) {
        canvas.rectangle(left + inset, top - height + inset, width - 2 * inset, height - 2 * inset);
        canvas.stroke();
    }
}
