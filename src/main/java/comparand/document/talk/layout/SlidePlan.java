package comparand.document.talk.layout;

import comparand.document.talk.Part;
import comparand.document.talk.Slide;
import java.util.ArrayList;
import java.util.List;

/**
 * The parts of a slide in their places: one below the other, in the largest text with which all of them fit. A figure takes
 * what the others leave.
 */
public final class SlidePlan {

    /** Sizes of text on a slide that is shown, the largest first; the last one is read from the back of a room. */
    static final List<Double> SHOWN = List.of(28.0, 26.0, 24.0, 22.0, 20.0);

    /** Sizes on a slide that is shown when asked for. */
    static final List<Double> BACKUP = List.of(20.0, 18.0, 16.0, 14.0, 12.0);

    /** Tables are not set larger than this: they would have to be split. */
    private static final double LARGEST_IN_TABLE = 22;

    private static final double WITH_FIGURE = 20;

    /** Between parts. */
    static final double BETWEEN = 16;

    private SlidePlan() {}

    public static List<Placed> of(Slide slide, Stage stage) {
        var measure = new Measure(stage.lines(), stage.body().width());
        var sizes = sizes(slide);
        double size = sizes.stream()
                .filter(s -> total(slide.parts(), measure, s) <= stage.body().height() && wholeWords(slide, measure, s))
                .findFirst()
                .orElse(sizes.get(sizes.size() - 1));
        return placed(slide.parts(), measure, size, stage.body());
    }

    /** Beside a figure text is small, so that the figure is large. */
    private static List<Double> sizes(Slide slide) {
        boolean figure = slide.parts().stream().anyMatch(p -> p instanceof Part.Drawing);
        var sizes = slide.backup() ? BACKUP : SHOWN;
        return figure ? sizes.stream().filter(s -> s <= WITH_FIGURE).toList() : sizes;
    }

    private static List<Placed> placed(List<Part> parts, Measure measure, double size, Box body) {
        double left = body.height() - total(parts, measure, size);
        long figures = parts.stream().filter(p -> p instanceof Part.Drawing).count();
        var placed = new ArrayList<Placed>();
        double y = body.y();
        for (var part : parts) {
            double own = sizeOf(part, size);
            double needed = measure.height(part, own);
            double height = needed + (part instanceof Part.Drawing && left > 0 ? left / figures : 0);
            double room = Math.max(1, Math.min(height, body.bottom() - y));
            placed.add(new Placed(part, new Box(body.x(), y, body.width(), room), own, needed));
            y += height + BETWEEN;
        }
        return placed;
    }

    private static boolean wholeWords(Slide slide, Measure measure, double size) {
        return slide.parts().stream()
                .noneMatch(p -> p instanceof Part.Grid g
                        && !measure.tooWide(g.table(), sizeOf(p, size)).isEmpty());
    }

    private static double sizeOf(Part part, double size) {
        return part instanceof Part.Grid || part instanceof Part.Cards || part instanceof Part.Sieve
                ? Math.min(size, LARGEST_IN_TABLE)
                : size;
    }

    private static double total(List<Part> parts, Measure measure, double size) {
        return parts.stream()
                        .mapToDouble(p -> measure.height(p, sizeOf(p, size)))
                        .sum()
                + BETWEEN * Math.max(0, parts.size() - 1);
    }
}
