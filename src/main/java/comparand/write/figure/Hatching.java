package comparand.write.figure;

import java.util.List;

/** Slanting lines in a rectangle, cut off at its edges here, so that no surface has to clip. */
final class Hatching {

    private static final double APART = 3.6;

    private Hatching() {}

    static void draw(Surface surface, Box box, Pen pen) {
        // lines x + y = c, on one grid for the whole figure, so that hatchings that touch run on
        double first = Math.ceil((box.left() + box.top()) / APART) * APART;
        for (double c = first; c < box.right() + box.bottom(); c += APART) {
            double fromX = Math.max(box.left(), c - box.bottom());
            double toX = Math.min(box.right(), c - box.top());
            if (toX - fromX > 0.2) {
                surface.line(List.of(new Spot(fromX, c - fromX), new Spot(toX, c - toX)), pen);
            }
        }
    }
}
