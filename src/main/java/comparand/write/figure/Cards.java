package comparand.write.figure;

import comparand.document.chart.Diagram;
import comparand.document.chart.Diagram.Card;
import comparand.document.chart.Ink;
import comparand.write.LineBreaks;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The boxes of a diagram: those of the way down at the left, what leaves at the right, with arrows between. A box is as high
 * as its text, so that no text leaves it.
 */
final class Cards {

    /** Within a box, beside and above its text. */
    private static final double PAD = 5;

    /** Between a box and what leaves there: room for an arrow. */
    private static final double ACROSS = 22;

    /** Between two boxes of the way down. */
    private static final double DOWN = 15;

    /** A figure of one column has less room for both. */
    private static final double NARROW = 300;

    private static final double ACROSS_NARROW = 13;

    /** How far the lines after the first of one text stand in. */
    private static final double HANGING = 5;

    private static final double HEAD_LENGTH = 4.5;
    private static final double HEAD_HALF = 2.2;

    private final Diagram diagram;
    private final Measure measure;
    private final Surface surface;
    private final double width;
    private final double gap;
    private final boolean paired;

    Cards(Diagram diagram, double width, Measure measure, Surface surface) {
        this.diagram = diagram;
        this.width = width;
        this.measure = measure;
        this.surface = surface;
        this.gap = width < NARROW ? ACROSS_NARROW : ACROSS;
        this.paired = diagram.steps().stream().anyMatch(s -> s.leaves().isPresent());
    }

    /** Draws all boxes and returns the height below them. */
    double draw() {
        double top = 0;
        double lowest = 0;
        var above = Optional.<Box>empty();
        for (var step : diagram.steps()) {
            top += above.isPresent() ? DOWN : 0;
            top = phase(step.phase(), top);
            var card = placed(step.card(), 0, top);
            var leaves = step.leaves().map(c -> placed(c, cardWidth() + gap, card.box.top()));
            above.ifPresent(a -> arrow(
                    new Spot(middle(), a.bottom()), new Spot(middle(), card.box.top()), new Spot(0, HEAD_LENGTH)));
            draw(card);
            leaves.ifPresent(l -> {
                draw(l);
                double y = card.box.top() + Math.min(card.box.height(), l.box.height()) / 2;
                arrow(new Spot(card.box.right(), y), new Spot(l.box.left(), y), new Spot(HEAD_LENGTH, 0));
            });
            above = Optional.of(card.box);
            double beside = leaves.map(l -> l.box.bottom()).orElse(0.0);
            // the next box at the side stands clear of this one
            top = Math.max(card.box.bottom(), beside + Type.GAP - DOWN);
            lowest = Math.max(card.box.bottom(), beside);
        }
        return lowest;
    }

    private double cardWidth() {
        return paired ? (width - gap) / 2 : width;
    }

    private double middle() {
        return cardWidth() / 2;
    }

    /** Above the box and left of the arrow that leads to it. */
    private double phase(String text, double top) {
        double y = top;
        if (!text.isBlank()) {
            for (var line : LineBreaks.of(text, middle() - Type.GAP, t -> measure.width(t, Type.TEXT, true))) {
                surface.text(new Lettering(
                        line,
                        new Spot(0, y + Type.ASCENT * Type.LEADING),
                        Lettering.Anchor.START,
                        Type.TEXT,
                        true,
                        Ink.TEAL.rgb()));
                y += Type.LEADING;
            }
            y += 1;
        }
        return y;
    }

    /** A line of text with how far it stands in. */
    private record Line(String text, double in) {}

    private record Placed(Box box, List<Line> lines) {}

    private Placed placed(Card card, double left, double top) {
        double room = cardWidth() - 2 * PAD;
        var lines = new ArrayList<Line>();
        for (var text : card.lines()) {
            var first = LineBreaks.of(text, room, this::wide);
            if (first.size() == 1) {
                lines.add(new Line(first.get(0), 0));
                continue;
            }
            var all = LineBreaks.of(text, room - HANGING, this::wide);
            for (int i = 0; i < all.size(); i++) {
                lines.add(new Line(all.get(i), i == 0 ? 0 : HANGING));
            }
        }
        double height = lines.size() * Type.LEADING + 2 * PAD - (Type.LEADING - Type.TEXT);
        return new Placed(new Box(left, top, left + cardWidth(), top + height), lines);
    }

    private double wide(String text) {
        return measure.width(text, Type.TEXT, false);
    }

    private void draw(Placed card) {
        var edge = card.box.wider(-Type.AXIS / 2);
        surface.polygon(
                List.of(
                        new Spot(edge.left(), edge.top()),
                        new Spot(edge.right(), edge.top()),
                        new Spot(edge.right(), edge.bottom()),
                        new Spot(edge.left(), edge.bottom())),
                Paint.hollow(Pen.whole(Type.ink(), Type.AXIS)));
        double y = card.box.top() + PAD;
        for (var line : card.lines) {
            surface.text(new Lettering(
                    line.text,
                    new Spot(card.box.left() + PAD + line.in, y + Type.ASCENT * Type.TEXT),
                    Lettering.Anchor.START,
                    Type.TEXT,
                    false,
                    Type.ink()));
            y += Type.LEADING;
        }
    }

    /** @param head from the base of the head to its tip */
    private void arrow(Spot from, Spot to, Spot head) {
        var base = to.plus(-head.x(), -head.y());
        boolean down = head.x() == 0;
        double x = down ? HEAD_HALF : 0;
        double y = down ? 0 : HEAD_HALF;
        surface.line(List.of(from, base), Pen.whole(Type.ink(), Type.AXIS));
        surface.polygon(List.of(to, base.plus(x, y), base.plus(-x, -y)), Paint.filled(Type.ink()));
    }
}
