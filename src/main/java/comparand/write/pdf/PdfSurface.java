package comparand.write.pdf;

import com.lowagie.text.pdf.PdfContentByte;
import comparand.write.figure.Lettering;
import comparand.write.figure.Paint;
import comparand.write.figure.Pen;
import comparand.write.figure.Spot;
import comparand.write.figure.Surface;
import java.awt.Color;
import java.util.List;

/** A page as a surface for figures, in vectors; text is set in the embedded faces and stays text. */
final class PdfSurface implements Surface {

    /** How far a control point of a quarter of a circle lies from its end, as a part of the radius: 4/3 (sqrt(2) - 1). */
    private static final double QUARTER = 4.0 / 3 * (Math.sqrt(2) - 1);

    private final PdfContentByte canvas;
    private final Fonts fonts;
    private final float left;
    private final float top;

    /** A surface whose upper left corner lies on a page at a place in points from its lower left corner. */
    PdfSurface(PdfContentByte canvas, Fonts fonts, float left, float top) {
        this.canvas = canvas;
        this.fonts = fonts;
        this.left = left;
        this.top = top;
    }

    @Override
    public void line(List<Spot> through, Pen pen) {
        canvas.saveState();
        set(pen);
        path(through);
        canvas.stroke();
        canvas.restoreState();
    }

    @Override
    public void polygon(List<Spot> corners, Paint paint) {
        painted(paint, () -> {
            path(corners);
            canvas.closePath();
        });
    }

    @Override
    public void circle(Spot centre, double radius, Paint paint) {
        float x = x(centre);
        float y = y(centre);
        float r = (float) radius;
        float c = (float) (QUARTER * radius);
        painted(paint, () -> {
            canvas.moveTo(x + r, y);
            canvas.curveTo(x + r, y + c, x + c, y + r, x, y + r);
            canvas.curveTo(x - c, y + r, x - r, y + c, x - r, y);
            canvas.curveTo(x - r, y - c, x - c, y - r, x, y - r);
            canvas.curveTo(x + c, y - r, x + r, y - c, x + r, y);
            canvas.closePath();
        });
    }

    @Override
    public void text(Lettering lettering) {
        canvas.beginText();
        canvas.setColorFill(new Color(lettering.rgb()));
        canvas.setFontAndSize(lettering.strong() ? fonts.strong() : fonts.regular(), (float) lettering.size());
        canvas.setTextMatrix(left + (float) lettering.left(fonts), y(lettering.at()));
        canvas.showText(lettering.text());
        canvas.endText();
    }

    private void painted(Paint paint, Runnable path) {
        canvas.saveState();
        paint.fill().ifPresent(rgb -> canvas.setColorFill(new Color(rgb)));
        paint.outline().ifPresent(this::set);
        path.run();
        if (paint.fill().isPresent() && paint.outline().isPresent()) {
            canvas.fillStroke();
        } else if (paint.fill().isPresent()) {
            canvas.fill();
        } else {
            canvas.stroke();
        }
        canvas.restoreState();
    }

    private void set(Pen pen) {
        canvas.setColorStroke(new Color(pen.rgb()));
        canvas.setLineWidth((float) pen.width());
        if (!pen.dashes().isEmpty()) {
            var dashes = new float[pen.dashes().size()];
            for (int i = 0; i < dashes.length; i++) {
                dashes[i] = pen.dashes().get(i).floatValue();
            }
            canvas.setLineDash(dashes, 0);
        }
    }

    private void path(List<Spot> spots) {
        canvas.moveTo(x(spots.get(0)), y(spots.get(0)));
        spots.stream().skip(1).forEach(s -> canvas.lineTo(x(s), y(s)));
    }

    private float x(Spot spot) {
        return left + (float) spot.x();
    }

    private float y(Spot spot) {
        return top - (float) spot.y();
    }
}
