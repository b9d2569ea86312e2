package comparand.document.chart;

/**
 * A straight line over the whole panel, or a short tick at its foot.
 *
 * @param upright whether it stands at a place of the axis across; else it lies at a place of the axis up
 * @param extent whole, or a tick only
 * @param label written at its end; may be empty
 */
public record Rule(boolean upright, double at, Trace trace, Extent extent, String label) {

    /** How long it is. */
    public enum Extent {
        WHOLE,
        TICK
    }
}
