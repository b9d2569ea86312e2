package comparand.write.figure;

import comparand.write.LineBreaks;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds places for labels: near what they name, on nothing that is drawn, and not on each other. */
final class LabelRoom {

    private static final double NEAR = 2;
    private static final double STEP = 4;
    /** Between two labels on one line. */
    private static final double BETWEEN = 3;

    private static final int STEPS = 4;
    /** How far a label above or below may stand to the side of what it names, in double steps. */
    private static final int ASIDE = 8;

    private static final int MOST_LINES = 4;
    /** Narrower than this a text is not broken for the sake of room. */
    private static final double NARROWEST = 36;

    private final Measure measure;
    private final List<Box> taken = new ArrayList<>();
    private final List<Box> toned = new ArrayList<>();

    LabelRoom(Measure measure) {
        this.measure = measure;
    }

    /** Nothing may be written here. */
    void take(Box box) {
        taken.add(box);
    }

    /** No label may lie on this line. */
    void takeLine(List<Spot> through) {
        for (int i = 1; i < through.size(); i++) {
            var from = through.get(i - 1);
            var to = through.get(i);
            int parts = (int) Math.max(1, Math.ceil(Math.hypot(to.x() - from.x(), to.y() - from.y()) / 3));
            for (int k = 0; k < parts; k++) {
                take(Box.between(between(from, to, k, parts), between(from, to, k + 1, parts), Type.CURVE / 2 + 0.4));
            }
        }
    }

    private static Spot between(Spot from, Spot to, double part, double parts) {
        return from.plus((to.x() - from.x()) * part / parts, (to.y() - from.y()) * part / parts);
    }

    /** Text that comes to lie here is given a white ground. */
    void tone(Box box) {
        toned.add(box);
    }

    private record Candidate(Box box, List<String> lines, Tag.Side side, double cost) {}

    /**
     * Writes a label; false where it finds no place.
     *
     * @param last whether it is then written all the same, where it lies on least
     */
    boolean write(Tag tag, Surface surface, boolean last) {
        var candidates = candidates(tag);
        var place = candidates.stream()
                .filter(c -> tag.bounds().holds(c.box) && taken.stream().noneMatch(c.box::meets))
                .findFirst();
        if (place.isEmpty() && last) {
            place = candidates.stream().min(Comparator.comparingDouble(c -> harm(tag, c)));
        }
        place.ifPresent(c -> {
            take(c.box.wider(BETWEEN));
            set(tag, c, surface);
        });
        return place.isPresent();
    }

    private double harm(Tag tag, Candidate c) {
        return taken.stream().filter(c.box::meets).count() + (tag.bounds().holds(c.box) ? 0 : 100);
    }

    private void set(Tag tag, Candidate c, Surface surface) {
        if (toned.stream().anyMatch(c.box::meets)) {
            var box = c.box;
            surface.polygon(
                    List.of(
                            new Spot(box.left() - 0.8, box.top()),
                            new Spot(box.right() + 0.8, box.top()),
                            new Spot(box.right() + 0.8, box.bottom()),
                            new Spot(box.left() - 0.8, box.bottom())),
                    Paint.filled(Type.WHITE));
        }
        var anchor = c.lines.size() > 1
                ? Lettering.Anchor.START
                : switch (c.side) {
                    case RIGHT, ABOVE_RIGHT, BELOW_RIGHT -> Lettering.Anchor.START;
                    case LEFT, ABOVE_LEFT, BELOW_LEFT -> Lettering.Anchor.END;
                    case ABOVE, BELOW -> Lettering.Anchor.MIDDLE;
                };
        double x = switch (anchor) {
            case START -> c.box.left();
            case END -> c.box.right();
            case MIDDLE -> (c.box.left() + c.box.right()) / 2;
        };
        for (int i = 0; i < c.lines.size(); i++) {
            double y = c.box.top() + (i + Type.ASCENT) * Type.LEADING;
            surface.text(new Lettering(c.lines.get(i), new Spot(x, y), anchor, Type.TEXT, false, tag.rgb()));
        }
    }

    private List<Candidate> candidates(Tag tag) {
        var all = new ArrayList<Candidate>();
        for (var lines : wrapped(tag)) {
            double width = lines.stream()
                    .mapToDouble(l -> measure.width(l, Type.TEXT, false))
                    .max()
                    .orElse(0);
            for (int s = 0; s < tag.sides().size(); s++) {
                var side = tag.sides().get(s);
                for (int off = 0; off < STEPS; off++) {
                    var box = tag.at(side, width, lines.size() * Type.LEADING, NEAR + off * STEP);
                    double cost = 2 * off + lines.size() - 1 + s * 0.4;
                    all.add(new Candidate(box, lines, side, cost));
                    if (side == Tag.Side.ABOVE || side == Tag.Side.BELOW) {
                        for (int aside = 1; aside <= ASIDE; aside++) {
                            double further = cost + 0.4 * aside;
                            all.add(new Candidate(box.moved(aside * STEP * 2), lines, side, further));
                            all.add(new Candidate(box.moved(-aside * STEP * 2), lines, side, further));
                        }
                    }
                }
            }
        }
        all.sort(Comparator.comparingDouble(Candidate::cost));
        return all;
    }

    /** The text in one line, in two and so on, without breaking words. */
    private List<List<String>> wrapped(Tag tag) {
        var ways = new ArrayList<List<String>>();
        double natural = measure.width(tag.text(), Type.TEXT, false);
        // a text that is long for its panel may take a line more than its width makes needful
        int needful =
                LineBreaks.of(tag.text(), tag.bounds().width(), this::width).size() + 1;
        for (int n = 1; n <= Math.max(MOST_LINES, needful); n++) {
            inLines(tag.text(), natural, n).filter(w -> !ways.contains(w)).ifPresent(ways::add);
        }
        return ways;
    }

    private Optional<List<String>> inLines(String text, double natural, int n) {
        if (n == 1) {
            return Optional.of(List.of(text));
        }
        for (double width = natural / n; width < natural; width += 4) {
            if (width < NARROWEST || LineBreaks.breaksWords(text, width, this::width)) {
                continue;
            }
            var lines = LineBreaks.of(text, width, this::width);
            if (lines.size() <= n) {
                return Optional.of(lines);
            }
        }
        return Optional.empty();
    }

    private double width(String text) {
        return measure.width(text, Type.TEXT, false);
    }
}
