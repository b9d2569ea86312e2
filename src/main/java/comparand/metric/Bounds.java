package comparand.metric;

/** The numbers a metric may take, in its own unit; both ends belong to it. */
public record Bounds(double low, double high) {

    public static final Bounds ANY = new Bounds(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    public Bounds {
        if (!(low < high)) {
            throw new IllegalArgumentException("bounds run upwards, got %s to %s".formatted(low, high));
        }
    }

    public boolean contain(double value) {
        return low <= value && value <= high;
    }
}
