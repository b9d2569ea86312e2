package comparand.write.figure;

import comparand.document.chart.Mark;
import java.util.List;
import java.util.Optional;

/** The shapes of points. Their outlines tell them apart, so that a copy in grey loses nothing. */
final class Marks {

    private static final double HALF = 2.6;
    private static final double DIAMOND = 3.4;
    private static final double DOT = 1.15;
    private static final double LINE = 0.9;
    private static final double STEM = 7.5;
    private static final double QUESTION = 4.2;

    private final Surface surface;

    Marks(Surface surface) {
        this.surface = surface;
    }

    void draw(Mark mark, Spot at, int rgb) {
        var pen = Pen.whole(rgb, LINE);
        switch (mark) {
            case FILLED_CIRCLE -> surface.circle(at, HALF, Paint.filled(rgb));
            case HOLLOW_CIRCLE -> surface.circle(at, HALF, Paint.hollow(pen));
            case FILLED_SQUARE -> square(at, rgb);
            case FILLED_SQUARE_WITH_TAIL -> {
                surface.line(List.of(at, at.plus(0, STEM)), Pen.whole(rgb, 1.2));
                square(at, rgb);
            }
            case HOLLOW_DIAMOND -> diamond(at, rgb);
            case HOLLOW_DIAMOND_ASKED -> {
                diamond(at, rgb);
                surface.text(new Lettering(
                        "?", at.plus(DIAMOND + 1.2, 2.7), Lettering.Anchor.START, Type.TEXT, true, Type.ink()));
            }
            case FILLED_TRIANGLE -> surface.polygon(triangle(at), Paint.filled(rgb));
            case HOLLOW_TRIANGLE -> surface.polygon(triangle(at), Paint.hollow(pen));
            case SMALL_DOT -> surface.circle(at, DOT, new Paint(Optional.of(rgb), Optional.empty()));
            case NONE -> {}
        }
    }

    private void square(Spot at, int rgb) {
        surface.polygon(
                List.of(at.plus(-HALF, -HALF), at.plus(HALF, -HALF), at.plus(HALF, HALF), at.plus(-HALF, HALF)),
                Paint.filled(rgb));
    }

    private void diamond(Spot at, int rgb) {
        surface.line(List.of(at.plus(0, DIAMOND), at.plus(0, DIAMOND + STEM)), new Pen(rgb, LINE, List.of(0.9, 1.2)));
        surface.polygon(
                List.of(at.plus(0, -DIAMOND), at.plus(DIAMOND, 0), at.plus(0, DIAMOND), at.plus(-DIAMOND, 0)),
                Paint.hollow(Pen.whole(rgb, LINE)));
    }

    private static List<Spot> triangle(Spot at) {
        return List.of(at.plus(0, -HALF * 1.15), at.plus(HALF * 1.1, HALF * 0.85), at.plus(-HALF * 1.1, HALF * 0.85));
    }

    /** The room a mark takes. */
    static Box box(Mark mark, Spot at) {
        double half = switch (mark) {
            case NONE -> 0.1;
            case SMALL_DOT -> DOT;
            case HOLLOW_DIAMOND, HOLLOW_DIAMOND_ASKED -> DIAMOND + LINE / 2;
            default -> HALF + LINE / 2;
        };
        double right = mark == Mark.HOLLOW_DIAMOND_ASKED ? DIAMOND + 1.2 + QUESTION : half;
        double down = switch (mark) {
            case FILLED_SQUARE_WITH_TAIL -> STEM;
            case HOLLOW_DIAMOND, HOLLOW_DIAMOND_ASKED -> DIAMOND + STEM;
            default -> half;
        };
        return new Box(at.x() - half, at.y() - half, at.x() + right, at.y() + down);
    }
}
