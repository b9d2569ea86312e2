package comparand.write.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.metadata.IIOInvalidTreeException;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Writes a figure as PNG at the resolution of a printer; the file says how large it is meant to be. */
public final class PngFigure {

    private static final double POINTS_PER_INCH = 72;
    private static final double INCHES_PER_METRE = 1 / 0.0254;
    private static final String FORMAT = "javax_imageio_png_1.0";

    private PngFigure() {}

    /** Writes a drawing with so many dots per inch. */
    public static void write(Drawing drawing, Faces faces, int dpi, OutputStream out) throws IOException {
        var image = new Palette().of(image(drawing, faces, dpi));
        var writers = ImageIO.getImageWritersByFormatName("png");
        if (!writers.hasNext()) {
            throw new IOException("this Java cannot write PNG");
        }
        var writer = writers.next();
        // in memory: a file to work in would want room on another disk
        try (var stream = new MemoryCacheImageOutputStream(out)) {
            var parameters = writer.getDefaultWriteParam();
            var metadata =
                    writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), parameters);
            metadata.mergeTree(FORMAT, resolution(dpi));
            writer.setOutput(stream);
            writer.write(null, new IIOImage(image, null, metadata), parameters);
        } catch (IIOInvalidTreeException e) {
            throw new IOException("the resolution of the figure could not be written", e);
        } finally {
            writer.dispose();
        }
    }

    /** The pHYs chunk: dots per metre. */
    private static IIOMetadataNode resolution(int dpi) {
        var dots = String.valueOf(Math.round(dpi * INCHES_PER_METRE));
        var physical = new IIOMetadataNode("pHYs");
        physical.setAttribute("pixelsPerUnitXAxis", dots);
        physical.setAttribute("pixelsPerUnitYAxis", dots);
        physical.setAttribute("unitSpecifier", "meter");
        var root = new IIOMetadataNode(FORMAT);
        root.appendChild(physical);
        return root;
    }

    private static BufferedImage image(Drawing drawing, Faces faces, int dpi) {
        double scale = dpi / POINTS_PER_INCH;
        int width = (int) Math.round(drawing.width() * scale);
        int height = (int) Math.ceil(drawing.height() * scale);
        var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        var graphics = image.createGraphics();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            graphics.setColor(Color.WHITE);
            graphics.fillRect(0, 0, width, height);
            graphics.scale(scale, scale);
            drawing.paint(new Sheet(graphics, faces));
        } finally {
            graphics.dispose();
        }
        return image;
    }

    /** Pixels. */
    private static final class Sheet implements Surface {

        private final Graphics2D graphics;
        private final Faces faces;

        Sheet(Graphics2D graphics, Faces faces) {
            this.graphics = graphics;
            this.faces = faces;
        }

        @Override
        public void line(List<Spot> through, Pen pen) {
            stroke(path(through), pen);
        }

        @Override
        public void polygon(List<Spot> corners, Paint paint) {
            var path = path(corners);
            path.closePath();
            shape(path, paint);
        }

        @Override
        public void circle(Spot centre, double radius, Paint paint) {
            shape(new Ellipse2D.Double(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius), paint);
        }

        @Override
        public void text(Lettering lettering) {
            graphics.setColor(new Color(lettering.rgb()));
            // outlines, not glyphs fitted to pixels: widths are then those that were laid out
            var outline = faces.font(lettering.size(), lettering.strong())
                    .createGlyphVector(graphics.getFontRenderContext(), lettering.text())
                    .getOutline((float) lettering.left(faces), (float)
                            lettering.at().y());
            graphics.fill(outline);
        }

        private void shape(Shape shape, Paint paint) {
            paint.fill().ifPresent(rgb -> {
                graphics.setColor(new Color(rgb));
                graphics.fill(shape);
            });
            paint.outline().ifPresent(pen -> stroke(shape, pen));
        }

        private void stroke(Shape shape, Pen pen) {
            graphics.setColor(new Color(pen.rgb()));
            graphics.setStroke(
                    pen.dashes().isEmpty()
                            ? new BasicStroke((float) pen.width(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER)
                            : new BasicStroke(
                                    (float) pen.width(),
                                    BasicStroke.CAP_BUTT,
                                    BasicStroke.JOIN_MITER,
                                    10,
                                    dashes(pen),
                                    0));
            graphics.draw(shape);
        }

        private static float[] dashes(Pen pen) {
            var lengths = new float[pen.dashes().size()];
            for (int i = 0; i < lengths.length; i++) {
                lengths[i] = pen.dashes().get(i).floatValue();
            }
            return lengths;
        }

        private static Path2D.Double path(List<Spot> spots) {
            var path = new Path2D.Double();
            path.moveTo(spots.get(0).x(), spots.get(0).y());
            spots.stream().skip(1).forEach(s -> path.lineTo(s.x(), s.y()));
            return path;
        }
    }
}
