package comparand.write.pptx;

import comparand.document.talk.Part;
import comparand.document.talk.layout.Box;
import comparand.document.talk.layout.Measure;
import comparand.document.talk.layout.Placed;
import comparand.document.talk.layout.Stage;
import java.awt.Color;
import java.util.Map;
import org.apache.poi.sl.usermodel.LineDecoration.DecorationShape;
import org.apache.poi.sl.usermodel.ShapeType;
import org.apache.poi.sl.usermodel.TextParagraph.TextAlign;
import org.apache.poi.sl.usermodel.VerticalAlignment;
import org.apache.poi.xslf.usermodel.XSLFAutoShape;
import org.apache.poi.xslf.usermodel.XSLFSlide;

/** Draws one part of a slide in its place, with native shapes. */
final class PartSetter implements Part.Cases<Integer> {

    private static final double LINE = 1.5;

    private final XSLFSlide slide;
    private final Placed placed;
    private final Stage stage;
    private final TextSetter text;
    private final Measure measure;
    private final Map<String, XSLFSlide> slides;

    /**
     * A setter for one part.
     *
     * @param slides all slides by their ids, for links
     */
    PartSetter(XSLFSlide slide, Placed placed, Stage stage, TextSetter text, Map<String, XSLFSlide> slides) {
        this.slide = slide;
        this.placed = placed;
        this.stage = stage;
        this.text = text;
        this.measure = new Measure(stage.lines(), stage.body().width());
        this.slides = slides;
    }

    /** How many shapes were drawn. */
    int set() {
        return placed.part().fold(this);
    }

    @Override
    public Integer headline(Part.Headline headline) {
        var box = slide.createTextBox();
        TextSetter.named(box, "Number and what belongs to it", "");
        text.box(box, placed.box(), VerticalAlignment.TOP, 0);
        text.line(box, headline.number(), Measure.NUMBER_SIZE, true, TextAlign.LEFT)
                .setFontColor(accent());
        text.line(box, headline.rider(), placed.size(), false, TextAlign.LEFT);
        return 1;
    }

    @Override
    public Integer points(Part.Points points) {
        var box = slide.createTextBox();
        TextSetter.named(box, "Text", "");
        text.box(box, placed.box(), VerticalAlignment.TOP, 0);
        for (var sentence : points.sentences()) {
            var paragraph = text.paragraph(box, TextAlign.LEFT, Measure.PARAGRAPH * placed.size());
            text.run(paragraph, sentence, placed.size(), false);
        }
        return 1;
    }

    @Override
    public Integer grid(Part.Grid grid) {
        new GridSetter(slide, placed, stage, text).set(grid.table());
        return 1;
    }

    @Override
    public Integer drawing(Part.Drawing drawing) {
        return new DrawingSetter(slide, placed.box(), stage, text).set(drawing.chart());
    }

    @Override
    public Integer sieve(Part.Sieve sieve) {
        double width = measure.boxWidth(sieve);
        double gap = width * Measure.GAP;
        double height = measure.boxHeight(sieve, placed.size());
        double x = placed.box().x();
        int shapes = 0;
        for (int i = 0; i < sieve.boxes().size(); i++) {
            var item = sieve.boxes().get(i);
            var box = frame("Step " + (i + 1), new Box(x, placed.box().y(), width, height), ShapeType.RECT);
            text.line(box, item.count(), placed.size() * Measure.COUNT, true, TextAlign.CENTER)
                    .setFontColor(accent());
            text.line(box, item.text(), placed.size(), false, TextAlign.CENTER);
            shapes++;
            x += width;
            if (i + 1 < sieve.boxes().size()) {
                arrow(
                        x,
                        gap,
                        placed.box().y() + height / 2,
                        sieve.boxes().get(i + 1).text());
                shapes++;
            }
            if (!item.dropped().isEmpty()) {
                double across = measure.dropWidth(sieve);
                double left = Math.min(x + gap / 2 - across / 2, placed.box().right() - across);
                var drop = slide.createTextBox();
                TextSetter.named(drop, "Left behind step " + (i + 1), "");
                double top = placed.box().y() + height + 12;
                text.box(
                        drop,
                        new Box(left, top, across, Math.max(1, placed.box().bottom() - top)),
                        VerticalAlignment.TOP,
                        0);
                text.line(drop, item.dropped(), placed.size(), false, TextAlign.CENTER);
                shapes++;
            }
            x += gap;
        }
        return shapes;
    }

    private void arrow(double x, double gap, double y, String to) {
        var arrow = slide.createConnector();
        arrow.setAnchor(new java.awt.geom.Rectangle2D.Double(x + 6, y, gap - 12, 0));
        arrow.setLineColor(TextSetter.GREY);
        arrow.setLineWidth(2.5);
        arrow.setLineTailDecoration(DecorationShape.TRIANGLE);
        TextSetter.named(arrow, "Arrow", "→ " + to);
    }

    @Override
    public Integer cards(Part.Cards cards) {
        double width = measure.cardWidth(cards);
        double x = placed.box().x();
        int number = 0;
        for (var card : cards.cards()) {
            number++;
            var box = frame(
                    "Card " + number,
                    new Box(x, placed.box().y(), width, placed.box().height()),
                    ShapeType.RECT);
            box.setVerticalAlignment(VerticalAlignment.TOP);
            box.setLeftInset(Measure.CARD_PAD);
            box.setRightInset(Measure.CARD_PAD);
            box.setTopInset(Measure.CARD_PAD);
            double after = Measure.PARAGRAPH * placed.size();
            var heading = text.paragraph(box, TextAlign.LEFT, after);
            text.run(heading, card.heading(), placed.size(), true).setFontColor(accent());
            for (var line : card.lines()) {
                text.run(text.paragraph(box, TextAlign.LEFT, after), line, placed.size(), false);
            }
            x += width + Measure.GUTTER;
        }
        return number;
    }

    @Override
    public Integer index(Part.Index index) {
        int half = (index.entries().size() + 1) / 2;
        for (int column = 0; column < 2; column++) {
            int from = column * half;
            int to = Math.min(index.entries().size(), from + half);
            if (from >= to) {
                return column;
            }
            var box = slide.createTextBox();
            TextSetter.named(box, column == 0 ? "Questions" : "Questions, continued", "");
            text.box(
                    box,
                    new Box(
                            placed.box().x() + column * (measure.indexWidth() + Measure.INDEX_GUTTER),
                            placed.box().y(),
                            measure.indexWidth(),
                            placed.box().height()),
                    VerticalAlignment.TOP,
                    0);
            for (var entry : index.entries().subList(from, to)) {
                var run = text.run(
                        text.paragraph(box, TextAlign.LEFT, 0.5 * placed.size()),
                        entry.question(),
                        placed.size(),
                        false);
                link(run, entry.slide());
            }
        }
        return 2;
    }

    private void link(org.apache.poi.xslf.usermodel.XSLFTextRun run, String to) {
        var target = slides.get(to);
        if (target == null) {
            throw new IllegalArgumentException("a link leads to no slide: " + to);
        }
        run.createHyperlink().linkToSlide(target);
    }

    private XSLFAutoShape frame(String name, Box place, ShapeType type) {
        var box = slide.createAutoShape();
        box.setShapeType(type);
        TextSetter.named(box, name, "");
        text.box(box, place, VerticalAlignment.MIDDLE, Measure.CELL_SIDE);
        box.setLineColor(accent());
        box.setLineWidth(LINE);
        box.setFillColor(new Color(stage.paper()));
        return box;
    }

    /** On masters of a house its own ink: our accent may not stand out from its paper. */
    private Color accent() {
        return stage.own() ? TextSetter.ACCENT : new Color(stage.ink());
    }
}
