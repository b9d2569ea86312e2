package comparand.write.figure;

/** An upright rectangle; y goes down. */
record Box(double left, double top, double right, double bottom) {

    static Box around(Spot middle, double halfWidth, double halfHeight) {
        return new Box(
                middle.x() - halfWidth, middle.y() - halfHeight, middle.x() + halfWidth, middle.y() + halfHeight);
    }

    static Box between(Spot one, Spot other, double halfWidth) {
        return new Box(
                Math.min(one.x(), other.x()) - halfWidth,
                Math.min(one.y(), other.y()) - halfWidth,
                Math.max(one.x(), other.x()) + halfWidth,
                Math.max(one.y(), other.y()) + halfWidth);
    }

    double width() {
        return right - left;
    }

    double height() {
        return bottom - top;
    }

    Box moved(double right) {
        return new Box(left + right, top, this.right + right, bottom);
    }

    Box wider(double by) {
        return new Box(left - by, top, right + by, bottom);
    }

    boolean meets(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    boolean holds(Box other) {
        return left <= other.left && other.right <= right && top <= other.top && other.bottom <= bottom;
    }
}
