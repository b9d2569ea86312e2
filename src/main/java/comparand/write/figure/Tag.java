package comparand.write.figure;

import java.util.List;

/**
 * A label that looks for a place beside what it names.
 *
 * @param anchor what it stands beside
 * @param sides in the order in which they are tried
 * @param bounds what it must not leave
 * @param row of the panel that has to grow if there is no place; 0 where there are no rows
 */
record Tag(String text, Box anchor, List<Side> sides, Box bounds, int rgb, int row) {

    enum Side {
        RIGHT,
        LEFT,
        ABOVE,
        BELOW,
        ABOVE_RIGHT,
        ABOVE_LEFT,
        BELOW_RIGHT,
        BELOW_LEFT
    }

    static final List<Side> BESIDE = List.of(
            Side.RIGHT,
            Side.LEFT,
            Side.ABOVE,
            Side.BELOW,
            Side.ABOVE_RIGHT,
            Side.BELOW_RIGHT,
            Side.ABOVE_LEFT,
            Side.BELOW_LEFT);

    Tag {
        sides = List.copyOf(sides);
    }

    /** Where a block of text of this size would stand on a side, some way off. */
    Box at(Side side, double width, double height, double off) {
        double middleX = (anchor.left() + anchor.right()) / 2;
        double middleY = (anchor.top() + anchor.bottom()) / 2;
        double left = switch (side) {
            case RIGHT, ABOVE_RIGHT, BELOW_RIGHT -> anchor.right() + off;
            case LEFT, ABOVE_LEFT, BELOW_LEFT -> anchor.left() - off - width;
            case ABOVE, BELOW -> Math.max(bounds.left(), Math.min(middleX - width / 2, bounds.right() - width));
        };
        double top = switch (side) {
            case RIGHT, LEFT -> middleY - height / 2;
            case ABOVE -> anchor.top() - off - height;
            case BELOW -> anchor.bottom() + off;
            case ABOVE_RIGHT, ABOVE_LEFT -> middleY - height;
            case BELOW_RIGHT, BELOW_LEFT -> middleY;
        };
        return new Box(left, top, left + width, top + height);
    }
}
